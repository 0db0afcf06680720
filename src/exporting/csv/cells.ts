import Papa from 'papaparse';

/** Read by a spreadsheet as the start of a formula; a name in a survey must never become a command. */
const startsFormula = /^[=+\-@\t\r]/;

export function harmless(cell: string | number): string {
  const text = String(cell);
  return startsFormula.test(text) ? `'${text}` : text;
}

/** Takes back the apostrophe that `harmless` put in front, and no other. */
export function withoutGuard(cell: string): string {
  return cell.startsWith("'") && startsFormula.test(cell.slice(1)) ? cell.slice(1) : cell;
}

/** RFC 4180: CRLF, quotes doubled, with a byte-order mark so that spreadsheets read the text as UTF-8. */
export function csvText(header: readonly string[], rows: readonly (readonly (string | number)[])[]): string {
  const table = [header, ...rows].map((row) => row.map(harmless));
  return `\uFEFF${Papa.unparse(table, { newline: '\r\n', header: false, escapeFormulae: false })}\r\n`;
}
