import { applyEdits, commandProblemInWords } from '../domain/commands/command.ts';
import { importEdits } from '../domain/import/again.ts';
import { importTable } from '../domain/import/csv.ts';
import { roomsTold } from '../domain/import/roomProposals.ts';
import { bestTable } from '../domain/import/sheets.ts';
import { newProject } from '../domain/model/newProject.ts';
import type { Project } from '../domain/model/project.ts';
import { placeOf } from '../domain/project/importPreview.ts';
import { openProblemInWords, openProjectText } from '../domain/versions/file.ts';
import { readSchedule } from '../intake/readFile.ts';
import { isContainer, readProjectFile } from '../intake/container.ts';
import { readProjectBytes } from '../intake/text.ts';
import { modelProcess } from './modelReader.ts';

export interface Loaded {
  readonly project: Project;
  /** One sentence each, with row and field where there is one. */
  readonly problems: readonly string[];
  /** Records left out, in whole or in part. */
  readonly refused: number;
}
export type Source = ({ readonly ok: true } & Loaded) | { readonly ok: false; readonly says: string };

/** A project file begins with a brace; everything else is taken as a table, read as the app reads it. */
export async function loadProject(bytes: Uint8Array): Promise<Source> {
  if (isContainer(bytes)) {
    const read = readProjectFile(bytes);
    return read.ok ? fromJson(read.text) : read;
  }
  if (!/^\uFEFF?\s*[{[]/.test(new TextDecoder().decode(bytes.subarray(0, 1000)))) return fromTable(bytes);
  const text = readProjectBytes(bytes);
  return text.ok ? fromJson(text.text) : text;
}

function fromJson(text: string): Source {
  const opened = openProjectText(text);
  if (!opened.ok) return { ok: false, says: openProblemInWords(opened.problem) };
  const { project, migrated, setAside } = opened;
  return {
    ok: true,
    project,
    problems: [
      ...migrated.map((step) => `The file was brought up to date: ${step}.`),
      ...setAside.map((one) => `${one.where}: ${one.says}`),
    ],
    refused: setAside.length,
  };
}

async function fromTable(bytes: Uint8Array): Promise<Source> {
  const models = modelProcess();
  const read = await readSchedule(bytes, models.read);
  models.end();
  if (!read.ok) return read;
  const table = bestTable(read.grids);
  if (!table.ok) return table;
  let count = 0;
  const imported = importTable(table.table, { newId: () => `row-${(count += 1)}` });
  const empty = newProject('file', 'File');
  const applied = applyEdits(empty, importEdits(empty, imported));
  if (!applied.ok) return { ok: false, says: commandProblemInWords(applied.problem) };
  const told = imported.skipped.filter(({ is }) => is !== 'blank');
  return {
    ok: true,
    project: applied.project,
    problems: [
      ...(read.note === '' ? [] : [read.note]),
      ...table.notes,
      ...roomsTold(imported.rooms),
      ...told.map(({ row, why }) => `Row ${row.number} is no opening: ${why}`),
      ...imported.problems.map(
        (problem) => `${placeOf(problem)}: ${problem.says}${problem.refuses ? ' The row was left out.' : ''}`,
      ),
    ],
    refused: imported.refused.length,
  };
}
