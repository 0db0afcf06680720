import type { Edit } from '../commands/command.ts';
import type { Project } from '../model/project.ts';
import type { HardwareSet, NumberState } from './sets.ts';

export const numberStateWords: Record<NumberState, string> = {
  fixed: 'Fixed',
  new: 'New since the numbers were fixed',
  notFixed: 'Not fixed yet',
};

/** Keeps the number of every set in use; undefined where each is kept already. */
export function fixNumbers(sets: readonly HardwareSet[]): Edit | undefined {
  const added = sets.filter((set) => set.numberState !== 'fixed');
  if (added.length === 0) return undefined;
  return {
    kind: 'keepSetNumbers',
    value: Object.fromEntries(added.map((set) => [set.signature, set.id])),
  };
}

/** Numbers kept for sets that no opening uses now. Bidders hold papers with them, so no other set gets them. */
export function retiredNumbers({ setNumbers }: Project, sets: readonly HardwareSet[]): readonly string[] {
  const used = new Set(sets.map((set) => set.signature));
  return Object.entries(setNumbers)
    .flatMap(([signature, number]) => (used.has(signature) ? [] : [number]))
    .toSorted((a, b) => a.localeCompare(b, 'en', { numeric: true }));
}

/** How far the numbers on this paper may be relied on. */
export function numberingInWords(project: Project, sets: readonly HardwareSet[]): readonly string[] {
  const added = sets.filter((set) => set.numberState === 'new').map((set) => set.id);
  const retired = retiredNumbers(project, sets);
  const lines: string[] = [];
  if (Object.keys(project.setNumbers).length === 0) {
    lines.push('Set numbers are not fixed yet: they follow the order of the schedule and change with it.');
  } else if (added.length === 0) {
    lines.push('Set numbers are fixed: each set has the number of earlier issues.');
  } else {
    lines.push(`Set numbers are fixed except those new since then: ${added.join(', ')}.`);
  }
  if (retired.length > 0) lines.push(`Not used any more, and given to no other set: ${retired.join(', ')}.`);
  return lines;
}
