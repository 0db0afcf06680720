import { commandProblemInWords } from '../domain/commands/command.ts';
import { applyCommand } from '../domain/commands/stamp.ts';
import type { Project } from '../domain/model/project.ts';
import type { Line } from './copy/lines.ts';

/** Does again what was accepted; the first edit that no longer fits ends it, because later ones lean on it. */
export function replay(
  project: Project,
  lines: readonly Line[],
): { readonly project: Project; readonly done: readonly Line[]; readonly says: string } {
  let current = project;
  for (const [index, line] of lines.entries()) {
    const applied = applyCommand(current, line.command, line.takingBack);
    if (!applied.ok) {
      return { project: current, done: lines.slice(0, index), says: commandProblemInWords(applied.problem) };
    }
    current = applied.project;
  }
  return { project: current, done: lines, says: '' };
}
