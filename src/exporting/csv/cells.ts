import Papa from 'papaparse';
import { harmless } from '../../domain/text/formulaGuard.ts';

/** RFC 4180: CRLF, quotes doubled, with a byte-order mark so that spreadsheets read the text as UTF-8. */
export function csvText(header: readonly string[], rows: readonly (readonly (string | number)[])[]): string {
  const table = [header, ...rows].map((row) => row.map(harmless));
  return `\uFEFF${Papa.unparse(table, { newline: '\r\n', header: false, escapeFormulae: false })}\r\n`;
}

/** For the clipboard: what a spreadsheet takes as cells, and ends every row as it does. */
export function tsvText(rows: readonly (readonly string[])[]): string {
  const table = rows.map((row) => row.map(harmless));
  const text = Papa.unparse(table, {
    delimiter: '\t',
    newline: '\r\n',
    header: false,
    escapeFormulae: false,
  });
  return `${text}\r\n`;
}

const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
const escaped = (text: string) => text.replaceAll(/[&<>"]/g, (sign) => escapes[sign] ?? sign);

/** The same as a table, for a letter or a sheet that keeps cells with several lines whole. */
export function htmlTable(rows: readonly (readonly string[])[]): string {
  const cell = (text: string) => `<td>${escaped(text).replaceAll(/\r\n?|\n/g, '<br>')}</td>`;
  return `<table>${rows.map((row) => `<tr>${row.map(cell).join('')}</tr>`).join('')}</table>`;
}
