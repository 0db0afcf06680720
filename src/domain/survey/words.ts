import { counted } from '../text/counted.ts';

/** What the survey says around its questions. */
export const surveyWords = {
  wholeBuilding: 'One answer for the whole building: it applies to every opening.',
  cannotTell: 'I can’t tell',
  whatTheyMean: 'What do these mean?',
  /** The same beside a label, where there is little room. */
  meanings: 'Meanings',
  noneOfThese: 'None of these, or I can’t tell: ask one by one',
  onePressAll: 'One press answers all that stands in it.',
  roundTheDoor: 'Round the door',
  shortestWay: 'Fewest questions',
  nothingAnswered: 'Nothing answered yet.',
  secureSide: 'Where the credential is read',
  egressSide: 'Where people leave from',
  whichSide: 'Secure side, where the credential is read → egress side, where people leave from.',
} as const;

export function howManyAnswered(count: number): string {
  return `${counted(count, 'answer')} so far`;
}

/** The sentence for a list that was searched in vain. */
export function noSuchChoice(typed: string): string {
  return `Nothing in the list has “${typed.trim()}” in it. Try a shorter word.`;
}
