/** A page shows the notes of one opening; the bar of the walk leads to them. */
export const notesId = 'notes-of-opening';

/** On a phone about this many signs go into a line of a note. */
const signsInLine = 38;
const mostRows = 12;

/** Rows for browsers that do not let a field grow with its text by themselves (`field-sizing`). */
export function rowsOf(text: string): number {
  const rows = text.split('\n').map((line) => Math.max(1, Math.ceil(line.length / signsInLine)));
  return Math.min(
    mostRows,
    rows.reduce((sum, one) => sum + one, 0),
  );
}
