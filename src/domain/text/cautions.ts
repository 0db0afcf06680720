/** Printed and shown wherever a decision stands. */
export const standingCautions = [
  'This is advice on the facts stated, under the edition stated. This is not a determination of code compliance.',
  'Local amendments and the authority having jurisdiction decide.',
  'Fire-alarm, electrical and fire-door work is for people licensed to do it.',
] as const;

export const standingCaution = standingCautions.join(' ');
