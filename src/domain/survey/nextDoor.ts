import type { Opening, Project } from '../model/project.ts';
import { nextMark } from './nextMark.ts';
import { openingLike } from './takeOver.ts';

/** More doors alike than anybody walks past in one corridor. */
export const longestRun = 40;

/** Marks that follow one another, past those in use. */
export function marksAfter(used: readonly string[], last: string, count: number): readonly string[] {
  const marks: string[] = [];
  for (let step = 0; step < count; step++) marks.push(nextMark([...used, ...marks], marks.at(-1) ?? last));
  return marks;
}

/** Doors like one, each with a mark of its own and each still to be looked at: every fact of them is assumed. */
export function runLike(like: Opening, marks: readonly string[], newId: () => string): readonly Opening[] {
  return marks.map((mark) => openingLike(newId(), mark, like));
}

export function runInWords(marks: readonly string[], like: string): string {
  const [first, last] = [marks[0] ?? '', marks.at(-1) ?? ''];
  return marks.length === 1 ? `${first} as ${like}` : `${first} to ${last} as ${like}`;
}

export function runToLookAt(count: number): string {
  return count === 1
    ? 'It is still to be looked at: all of it stands as assumed.'
    : `${count} doors are still to be looked at: all of it stands as assumed.`;
}

/** What a mark begins with: "2-" of 2-06, "G-" of G-01, "3" of 301. */
export function beginningOfMark(mark: string): string {
  return /^(.*?\D)\d+\D*$/.exec(mark)?.[1] ?? /^(\d+)\d\d\D*$/.exec(mark)?.[1] ?? '';
}

/** The floor that other openings with the same beginning of a mark stand on, where all of them agree. */
export function floorOfMark(project: Project, mark: string, except?: string): string | undefined {
  const start = beginningOfMark(mark);
  if (start === '') return undefined;
  const floors = new Set(
    Object.values(project.openings)
      .filter((one) => one.id !== except && one.floorId !== null && beginningOfMark(one.mark) === start)
      .map((one) => one.floorId),
  );
  const [floor] = floors;
  return floors.size === 1 && floor ? floor : undefined;
}

export interface FloorDoubt {
  readonly floorId: string;
  readonly says: string;
  readonly move: string;
}

/** Mark and floor that disagree: said, never corrected in silence. */
export function floorDoubt(project: Project, opening: Opening): FloorDoubt | undefined {
  const meant = floorOfMark(project, opening.mark, opening.id);
  const floor = meant === undefined ? undefined : project.floors[meant];
  if (!floor || floor.id === opening.floorId) return undefined;
  const here = opening.floorId === null ? undefined : project.floors[opening.floorId]?.name;
  return {
    floorId: floor.id,
    says: `Other marks like ${opening.mark} are on “${floor.name}”; this one stands ${here ? `on “${here}”` : 'on no floor'}.`,
    move: `Put it on “${floor.name}”`,
  };
}

export const nextDoorWords = {
  fresh: (mark: string) => `Next: ${mark}, from the start`,
  same: (mark: string, like: string) => `Next: ${mark}, the same as ${like}`,
  several: 'Several the same …',
  makeUsual: 'Make this door the usual of the building',
} as const;
