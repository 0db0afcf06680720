/** Read by a spreadsheet as the start of a formula, full-width signs and a leading line feed included. */
const startsFormula = /^'*[=+\-@\t\r\n＝＋－＠]/;

/** A name in a survey must never become a command; one apostrophe in front keeps it text. */
export function harmless(cell: string | number): string {
  const text = String(cell);
  return startsFormula.test(text) ? `'${text}` : text;
}

/** Takes back the apostrophe that `harmless` put in front, and no other. */
export function withoutGuard(cell: string): string {
  return cell.startsWith("'") && startsFormula.test(cell) ? cell.slice(1) : cell;
}
