import type { Edit } from '../commands/command.ts';
import type { Project, StoredSet } from '../model/project.ts';
import { contentNow } from '../hardware/content.ts';
import { type NumberState, naturally } from './setGroups.ts';
import type { HardwareSet } from './sets.ts';

export const numberStateWords: Record<NumberState, string> = {
  fixed: 'Fixed',
  revised: 'Revised since the numbers were fixed',
  new: 'New since the numbers were fixed',
  notFixed: 'Not fixed yet',
};

/** Keeps number, revision, openings and content of every set as they are now; empty where all of it is kept already. */
export function fixNumbers(project: Project, sets: readonly HardwareSet[]): readonly Edit[] {
  const used = new Set(sets.map((set) => set.storedId));
  const left = Object.values(project.hardwareSets).flatMap((set): Edit[] => {
    if (used.has(set.id) || Object.keys(set.members).length === 0) return [];
    return [{ kind: 'putHardwareSet', id: set.id, value: { ...set, members: {} } }];
  });
  const kept = sets.flatMap((set): Edit[] => {
    const before = stored(project, set.storedId);
    const id = before?.id ?? freeId(project, set.id);
    const value = nowOf(set, before, id);
    return before && same(before, value) ? [] : [{ kind: 'putHardwareSet', id, value }];
  });
  return [...left, ...kept];
}

function nowOf(set: HardwareSet, before: StoredSet | undefined, id: string): StoredSet {
  const { formerly: _formerly, ...rest } = before ?? { id, number: set.id, name: '' };
  return {
    ...rest,
    revision: set.revision,
    content: set.content,
    members: Object.fromEntries(set.openings.map((opening) => [opening.id, true as const])),
  };
}

/** Whether what is stored says the same as it would now. */
function same(one: StoredSet, other: StoredSet): boolean {
  const ids = (set: StoredSet) => Object.keys(set.members).toSorted().join();
  return (
    one.formerly === undefined &&
    one.revision === other.revision &&
    contentNow(one.content) === other.content &&
    ids(one) === ids(other)
  );
}

function stored({ hardwareSets }: Project, id: string): StoredSet | undefined {
  return Object.hasOwn(hardwareSets, id) ? hardwareSets[id] : undefined;
}

/** Made from the number, so that two copies of a project that fix the same set make the same one. */
function freeId(project: Project, number: string): string {
  let id = `set-${number}`;
  while (stored(project, id)) id = `${id}-2`;
  return id;
}

/**
 * Gives a set another number or name; its revision and openings stay. A number that another set has or had is refused:
 * bidders hold papers with it.
 */
export function renamed(
  project: Project,
  id: string,
  to: Partial<Pick<StoredSet, 'number' | 'name'>>,
): Edit[] | { readonly says: string } {
  const before = stored(project, id);
  if (!before) return [];
  if (to.number === '') return { says: 'A set needs a number.' };
  const taken = Object.values(project.hardwareSets).find(
    (one) => one.id !== id && one.number.toLowerCase() === to.number?.toLowerCase(),
  );
  if (taken) return { says: `${taken.number} is the number of another set, or was.` };
  return [{ kind: 'putHardwareSet', id, value: { ...before, ...to } }];
}

/** Openings of one set put into another; the number of the first is not used any more. */
export function mergedSets(project: Project, from: string, into: string): readonly Edit[] {
  const [one, other] = [stored(project, from), stored(project, into)];
  if (!one || !other || one === other) return [];
  return [
    { kind: 'putHardwareSet', id: from, value: { ...one, members: {} } },
    { kind: 'putHardwareSet', id: into, value: { ...other, members: { ...other.members, ...one.members } } },
  ];
}

/** Sets that are made of the same things under two numbers: they may be merged, and nothing does it by itself. */
export function mergeable(sets: readonly HardwareSet[]): readonly (readonly HardwareSet[])[] {
  const alike = new Map<string, HardwareSet[]>();
  for (const set of sets) alike.set(set.content, [...(alike.get(set.content) ?? []), set]);
  return [...alike.values()].filter((list) => list.length > 1);
}

/** Numbers of sets that no opening uses now. Bidders hold papers with them, so no other set gets them. */
export function retiredNumbers({ hardwareSets }: Project, sets: readonly HardwareSet[]): readonly string[] {
  const used = new Set(sets.map((set) => set.storedId));
  return Object.values(hardwareSets)
    .flatMap(({ id, number }) => (used.has(id) ? [] : [number]))
    .toSorted(naturally.compare);
}

/** How far the numbers on this paper may be relied on. */
export function numberingInWords(project: Project, sets: readonly HardwareSet[]): readonly string[] {
  const named = (state: NumberState) => sets.filter((set) => set.numberState === state).map((set) => set.id);
  const [added, revised] = [named('new'), named('revised')];
  const retired = retiredNumbers(project, sets);
  const lines: string[] = [];
  if (Object.keys(project.hardwareSets).length === 0) {
    lines.push('Set numbers are not fixed yet: they follow the order of the schedule and change with it.');
  } else if (added.length === 0) {
    lines.push('Set numbers are fixed: each set has the number of earlier issues.');
  } else {
    lines.push(`Set numbers are fixed except those new since then: ${added.join(', ')}.`);
  }
  if (revised.length > 0) lines.push(`Revised since the numbers were fixed: ${revised.join(', ')}.`);
  for (const alike of mergeable(sets)) {
    lines.push(`${alike.map((set) => set.id).join(' and ')} are made of the same things and may be merged.`);
  }
  if (retired.length > 0) lines.push(`Not used: ${retired.join(', ')}. No other set gets these numbers.`);
  return lines;
}
