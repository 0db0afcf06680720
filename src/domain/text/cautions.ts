/** Printed and shown wherever a decision stands. */
export const standingCautions = [
  'This is advice on the facts stated, under the edition stated. It is no finding that the opening meets any code.',
  'Local amendments and the authority having jurisdiction decide.',
  'Fire-alarm, electrical and fire-door work belongs to people licensed for it.',
] as const;

export const standingCaution = standingCautions.join(' ');
