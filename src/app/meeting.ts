import type { Edit } from '../domain/commands/command.ts';
import { type Compared, compareCopies } from '../domain/merge/differences.ts';
import { mergeEdit } from '../domain/merge/merge.ts';
import { longestName } from '../domain/model/ids.ts';
import { changedParts } from '../domain/model/parts.ts';
import type { Project } from '../domain/model/project.ts';
import type { OpenedFile } from '../storage/fileAccess.ts';

/** A file of a project that is in this browser already: nothing is replaced before somebody has said how. */
export interface Meeting {
  readonly name: string;
  readonly compared: Compared;
  /** As it was read; handed back with the choice. */
  readonly read: Extract<OpenedFile, { ok: true }>;
}

export type TakeHow = 'merge' | 'copy' | 'replace';

/** What is dispatched to merge the one into the other. */
export const mergeCommand = (here: Project, there: Project): { label: string; edits: readonly Edit[] } => ({
  label: 'Merge of a file',
  edits: [mergeEdit(here, there)],
});

/** Undefined when the file holds just what is here. */
export function meetingOf(here: Project, read: Extract<OpenedFile, { ok: true }>): Meeting | undefined {
  const there = read.opened.project;
  if (changedParts(here, there).length === 0) return undefined;
  return { name: here.name, compared: compareCopies(here, there), read };
}

/** The same under an id and a name of its own. */
export function apart({ read }: Meeting, id: string): Project {
  const ending = ' (copy)';
  const name = read.opened.project.name.slice(0, longestName - ending.length);
  return { ...read.opened.project, id, name: `${name}${ending}` };
}
