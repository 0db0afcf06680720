import type { Command } from '../../domain/commands/command.ts';
import { newOpening, newProject } from '../../domain/model/newProject.ts';
import type { Project } from '../../domain/model/project.ts';

export function house(notes = ''): Project {
  return {
    ...newProject('p', 'House'),
    notes,
    openings: { a: newOpening('a', '101'), b: newOpening('b', '102') },
  };
}

export function noteCommand(id: string, value: string): Command {
  return {
    id,
    at: '2026-01-05T08:00:00.000Z',
    by: 'R. Vega',
    label: 'Notes',
    edits: [{ kind: 'setProject', field: 'notes', value }],
  };
}

/** A state that many edits old. */
export const at = (revision: number) => ({ revision, tip: `t${revision}` });
