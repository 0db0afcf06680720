/** Said of a text that was typed into a field and is no part of the project yet. */
export const draftWords = {
  offered: 'Typed here earlier and not saved. It is no part of the project yet.',
  keep: 'Save it',
  discard: 'Discard it',
  goTo: 'Go to the field',
  readOnly: 'Read only here.',
} as const;

const longest = 80;

/** A draft whose field is not on the screen: which field, and how its text begins. */
export function draftInWords({ label, value }: { readonly label: string; readonly value: unknown }): string {
  const texts = typeof value === 'string' ? [value] : Object.values(Object(value) as object);
  const text = texts
    .filter((one): one is string => typeof one === 'string' && one.trim() !== '')
    .join(', ')
    .replaceAll(/\s+/g, ' ');
  const short = text.length > longest ? `${text.slice(0, longest)}…` : text;
  return `${label}: ${short === '' ? 'a change' : `“${short}”`} is typed and not saved yet.`;
}
