import { describe, expect, it } from 'vitest';
import { bestTable } from '../../src/domain/import/sheets.ts';
import { newOpening, newProject } from '../../src/domain/model/newProject.ts';
import type { Project } from '../../src/domain/model/project.ts';
import { factsCsv, surveyTable } from '../../src/exporting/csv/factsCsv.ts';
import { workbookOf } from '../../src/exporting/xlsx/workbook.ts';
import { readSchedule } from '../../src/intake/readFile.ts';

/** Notes that a spreadsheet would take for a formula, and marks it would take for a number. */
const notes = ['=1+2', '+1', '-1', '@SUM(A1)', '＝1', "'=1", "''=x", 'plain', 'a, "b"'];
const project: Project = {
  ...newProject('p', 'Project'),
  openings: Object.fromEntries(
    notes.map((note, index) => [`o${index}`, { ...newOpening(`o${index}`, `=${index}`), notes: note }]),
  ),
};

async function readBack(bytes: Uint8Array) {
  const read = await readSchedule(bytes);
  if (!read.ok) throw new Error(read.says);
  const found = bestTable(read.grids);
  if (!found?.ok) throw new Error('no table');
  return found.table.rows.map((row) => row.cells);
}

describe('what is exported comes back through our own import', () => {
  const { head, rows } = surveyTable(project);
  it('as CSV', async () => {
    expect(await readBack(new TextEncoder().encode(factsCsv(project)))).toEqual(rows);
  });
  it('as a workbook', async () => {
    expect(await readBack(await workbookOf([{ name: 'Survey', head, rows }]))).toEqual(rows);
  });
});
