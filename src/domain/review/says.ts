/** Words that fill a field and say nothing. */
const fillers = new Set(
  (
    'ok okay yes no na none nil tbd todo test testing fine good approved approve approval accepted accept done see ' +
    'same ditto me self name reason asdf qwerty foo bar abc xyz looks as per above required needed check checked'
  ).split(' '),
);

const lettersIn = (text: string) => text.match(/\p{L}/gu)?.length ?? 0;
const wordsIn = (text: string) => text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];

/** "xxx" and "....": one sign over and over says nothing. */
const repeats = (text: string) => new Set(text.toLowerCase().match(/\p{L}/gu)).size < 2;

/** A name a person can be found by, or a role such as "FPE"; three letters, and no word that only fills the field. */
export function isName(text: string): boolean {
  return lettersIn(text) >= 3 && !repeats(text) && wordsIn(text).some((word) => !fillers.has(word));
}

/** A reason somebody can act on: two words at least that say something, and eight letters. */
export function isReason(text: string): boolean {
  const telling = wordsIn(text).filter((word) => !fillers.has(word));
  return lettersIn(text) >= 8 && wordsIn(text).length >= 2 && telling.length > 0 && !repeats(text);
}

/** A document that can be asked for: a letter with its date or number. */
export function isReference(text: string): boolean {
  return text.trim().length >= 4 && wordsIn(text).some((word) => !fillers.has(word)) && !repeatsSigns(text);
}

const repeatsSigns = (text: string) => new Set(text.replace(/\s/g, '')).size < 3;

export function isDay(day: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(day)) return false;
  const date = new Date(`${day}T00:00:00Z`);
  return !Number.isNaN(date.getTime()) && date.toISOString().startsWith(day);
}
