import { readCsv } from '../exporting/csv/readCsv.ts';
import { withoutGuard } from '../exporting/csv/cells.ts';
import { applyEdits, commandProblemInWords } from '../domain/commands/command.ts';
import { importEdits, importRows } from '../domain/import/csv.ts';
import { findHeader } from '../domain/import/headers.ts';
import { newProject } from '../domain/model/newProject.ts';
import type { Project } from '../domain/model/project.ts';
import { openProblemInWords, openProjectText } from '../domain/versions/file.ts';

export interface Loaded {
  readonly project: Project;
  /** One sentence each, with row and field where there is one. */
  readonly problems: readonly string[];
  /** Records left out, in whole or in part. */
  readonly refused: number;
}
export type Source = ({ readonly ok: true } & Loaded) | { readonly ok: false; readonly says: string };

/** A project file begins with a brace; everything else is taken as a table. */
export function loadProject(text: string): Source {
  const start = text.replace(/^\uFEFF/, '').trimStart();
  if (start === '') return { ok: false, says: 'The file is empty.' };
  return start.startsWith('{') || start.startsWith('[') ? fromJson(text) : fromCsv(text);
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

function fromCsv(text: string): Source {
  const read = readCsv(text);
  if (!read.ok) return read;
  const table = read.table.map((row) => row.map(withoutGuard));
  const head = findHeader(table);
  if (head === undefined) {
    return { ok: false, says: 'No row names the columns: none of the first rows has “mark” or “Door No.”.' };
  }
  let count = 0;
  const imported = importRows(table[head] ?? [], table.slice(head + 1), {
    newId: () => `row-${(count += 1)}`,
    firstRow: head + 2,
  });
  const empty = newProject('file', 'File');
  const applied = applyEdits(empty, importEdits(empty, imported));
  if (!applied.ok) return { ok: false, says: commandProblemInWords(applied.problem) };
  return {
    ok: true,
    project: applied.project,
    problems: imported.problems.map((problem) => {
      const where = [
        problem.row === null ? undefined : `row ${problem.row}`,
        problem.column === null ? undefined : problem.column,
      ].filter((part) => part !== undefined);
      const left = problem.refuses ? ' The row was left out.' : '';
      return `${where.length > 0 ? `${where.join(', ')}: ` : ''}${problem.says}${left}`;
    }),
    refused: imported.refused.length,
  };
}
