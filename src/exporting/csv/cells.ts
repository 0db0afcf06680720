import Papa from 'papaparse';
import { harmless } from '../../domain/text/formulaGuard.ts';

/** RFC 4180: CRLF, quotes doubled, with a byte-order mark so that spreadsheets read the text as UTF-8. */
export function csvText(header: readonly string[], rows: readonly (readonly (string | number)[])[]): string {
  const table = [header, ...rows].map((row) => row.map(harmless));
  return `\uFEFF${Papa.unparse(table, { newline: '\r\n', header: false, escapeFormulae: false })}\r\n`;
}
