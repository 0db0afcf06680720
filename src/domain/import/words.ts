import { oneSpelling } from '../survey/readValue.ts';

/** A word of a column that may mean two things: nobody but a person who knows the schedule can say which. */
export interface UndecidedWord {
  /** Names column and word, so that the answer holds for the next file with that column. */
  readonly key: string;
  readonly column: string;
  readonly word: string;
  /** What it may mean, minutes of a fire rating. */
  readonly minutes: readonly number[];
}

/** Minutes by column and word; absent leaves the word open. */
export type ChosenWords = Readonly<Record<string, string>>;

/**
 * Classes of opening and the minutes that their labels came in; a class names the wall and not the door. From memory
 * of the older label classes, so the person chooses and the door is assumed.
 */
const classes: Readonly<Record<string, readonly number[]>> = {
  A: [180],
  B: [60, 90],
  C: [45],
  D: [90],
  E: [45],
};

export function undecidedRating(column: string, text: string): UndecidedWord | undefined {
  const word = text.trim();
  const upper = word.toUpperCase();
  const letter = /^"?([A-E])"?( LABEL)?$/.exec(upper)?.[1];
  const minutes = classes[letter ?? ''];
  const isDash = /^(-+|\u2013|\u2014|N\/A|NA)$/.test(upper);
  if (!minutes && !isDash) return undefined;
  return { key: `${oneSpelling(column)}: ${upper}`, column, word, minutes: minutes ?? [0] };
}

export function chosenMinutes(words: ChosenWords, { key, minutes }: UndecidedWord): number | undefined {
  const chosen = Object.hasOwn(words, key) ? Number(words[key]) : undefined;
  return minutes.find((one) => one === chosen);
}

export const undecidedInWords = ({ column, word }: UndecidedWord) => `“${word}” in column ${column} means`;

export const meaningInWords = (minutes: number | undefined, { minutes: may }: UndecidedWord) =>
  minutes === undefined
    ? may.includes(0)
      ? 'nothing; the rating stays unknown'
      : 'not decided; the rating stays unknown'
    : minutes === 0
      ? 'not rated'
      : `${minutes} min`;
