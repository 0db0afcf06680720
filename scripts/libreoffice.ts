/**
 * Has LibreOffice open the workbook of the demo building and write each of its sheets as CSV, and holds every cell against
 * what was written. Says so and ends with 0 where LibreOffice is not installed. `npx tsx scripts/libreoffice.ts`
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Papa from 'papaparse';
import { decideInBuilding } from '../src/domain/building/joined.ts';
import { billOf } from '../src/domain/bid/bill.ts';
import { coverSheet } from '../src/exporting/sheets/coverSheet.ts';
import { draftOf } from '../src/exporting/sheets/stamp.ts';
import { projectParts } from '../src/exporting/xlsx/projectParts.ts';
import { type Part, workbookOf } from '../src/exporting/xlsx/workbook.ts';
import { demoProject } from './demo/demoProject.ts';
import { findOffice } from './lib/office.ts';

/** Every sheet by its name, comma, quotes, UTF-8, formatted values off. */
const asCsv = 'csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,-1';

function differs(part: Part, file: string): number {
  // The comma was asked for; a guess would take the colons of the cover for one.
  const rows = Papa.parse<string[]>(readFileSync(file, 'utf8'), { delimiter: ',' }).data;
  const wanted = [part.head, ...part.rows];
  return wanted.reduce((sum, row, line) => {
    const isSame = (was: string, is: string) =>
      was === is || (was !== '' && is !== '' && Number(was) === Number(is));
    return sum + row.filter((cell, at) => !isSame(String(cell ?? ''), rows[line]?.[at] ?? '')).length;
  }, 0);
}

const office = findOffice();
if (office === undefined) {
  console.log('LibreOffice is not installed here, so it did not open the workbook.');
} else {
  const project = demoProject();
  const decisions = decideInBuilding(project);
  const bill = billOf(project, decisions);
  const cover = coverSheet(project, decisions, bill, draftOf('2026-03-02'), new Set());
  const parts = projectParts(project, decisions, bill, cover, true);
  const folder = mkdtempSync(join(tmpdir(), 'latchward-'));
  try {
    writeFileSync(join(folder, 'bid.xlsx'), await workbookOf(parts));
    execFileSync(office, ['--headless', '--convert-to', asCsv, '--outdir', folder, join(folder, 'bid.xlsx')]);
    const made = readdirSync(folder);
    for (const part of parts) {
      const file = made.find((name) => name === `bid-${part.name}.csv`);
      if (!file) throw new Error(`LibreOffice wrote no sheet ${part.name}.`);
      const wrong = differs(part, join(folder, file));
      console.log(`${part.name}: ${part.rows.length} rows, ${wrong} cells differ.`);
      if (wrong > 0) process.exitCode = 1;
    }
  } finally {
    rmSync(folder, { recursive: true });
  }
}
