/** What the survey says around its questions. */
export const surveyWords = {
  wholeBuilding: 'One answer for the whole building: it counts at every opening.',
  cannotTell: 'I can’t tell',
  whatTheyMean: 'What do these mean?',
  nothingMore:
    'Nothing more needs to be asked: the rest cannot change this decision, and what nobody could tell stays open.',
  /** Nothing more to ask, and still something open: what nobody could tell. */
  nothingMoreOpen:
    'Nothing more can be asked here. What nobody could tell stays open; answer it below as soon as somebody knows.',
  nothingAnswered: 'Nothing answered yet.',
  secureSide: 'Where the credential is read',
  egressSide: 'Where people leave from',
} as const;

export function howManyAnswered(count: number): string {
  return count === 1 ? '1 answer so far' : `${count} answers so far`;
}

/** The sentence for a list that was searched in vain. */
export function noSuchChoice(typed: string): string {
  return `Nothing in the list has “${typed.trim()}” in it. Try a shorter word.`;
}
