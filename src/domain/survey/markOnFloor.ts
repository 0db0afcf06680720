import { compareMarks, type Opening, type Project } from '../model/project.ts';
import { beginningOfMark } from './nextDoor.ts';
import { nextMark } from './nextMark.ts';

function onFloor(project: Project, floorId: string | null): readonly Opening[] {
  return Object.values(project.openings).filter((one) => one.floorId === floorId);
}

/** What the marks of a floor begin with, and how many of them do. */
function beginnings(openings: readonly Opening[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { mark } of openings) {
    const start = beginningOfMark(mark);
    if (start !== '') counts.set(start, (counts.get(start) ?? 0) + 1);
  }
  return counts;
}

/**
 * The next free mark on a floor: on from the door one stands at where it is on that floor, else on from the last of
 * those that most marks there are like. Undefined where the floor has no mark to count on from, or where counting on
 * runs into the marks of another floor.
 */
export function nextMarkOn(
  project: Project,
  floorId: string | null,
  near?: Pick<Opening, 'mark' | 'floorId'>,
): string | undefined {
  const there = onFloor(project, floorId);
  const [most] = [...beginnings(there)].toSorted((a, b) => b[1] - a[1]);
  const kin = most ? there.filter(({ mark }) => beginningOfMark(mark) === most[0]) : there;
  const last =
    near && near.floorId === floorId
      ? near.mark
      : kin
          .map(({ mark }) => mark)
          .toSorted(compareMarks)
          .at(-1);
  if (last === undefined) return undefined;
  const used = Object.values(project.openings).map(({ mark }) => mark);
  const mark = nextMark(used, last);
  return markDoubt(project, mark, floorId) ? undefined : mark;
}

/** A mark and a floor that do not go together, put as a question: nothing of it is settled without an answer. */
export interface MarkDoubt {
  readonly says: string;
  /** The floor that marks like it are on, where it is one. */
  readonly move?: { readonly floorId: string; readonly says: string };
  /** The next free mark of the floor that was chosen. */
  readonly rename?: { readonly mark: string; readonly says: string };
  readonly keep: string;
}

export function markDoubt(project: Project, mark: string, floorId: string | null): MarkDoubt | undefined {
  const floor = floorId === null ? undefined : project.floors[floorId];
  const start = beginningOfMark(mark);
  if (!floor || start === '') return undefined;
  const here = beginnings(onFloor(project, floor.id));
  if (here.has(start)) return undefined;
  const elsewhere = Object.values(project.floors).filter(
    (one) => one.id !== floor.id && beginnings(onFloor(project, one.id)).has(start),
  );
  const [meant] = elsewhere;
  const [only] = [...here];
  const keep = `Keep ${mark} on “${floor.name}”`;
  if (meant) {
    const names = elsewhere.map(({ name }) => `“${name}”`).join(' and ');
    return {
      says: `Other marks like ${mark} are on ${names}; you chose “${floor.name}”. Which is right?`,
      ...(elsewhere.length === 1
        ? { move: { floorId: meant.id, says: `Put it on “${meant.name}”` } }
        : undefined),
      keep,
    };
  }
  // One mark makes no pattern.
  if (here.size === 1 && only && only[1] > 1)
    return { says: `Marks on “${floor.name}” begin with ${only[0]}; ${mark} does not. Is it right?`, keep };
  return undefined;
}

/** The same doubt with the mark that would fit the floor. */
export function askMarkAndFloor(
  project: Project,
  mark: string,
  floorId: string | null,
  near: Pick<Opening, 'mark' | 'floorId'>,
): MarkDoubt | undefined {
  const doubt = markDoubt(project, mark, floorId);
  const fits = doubt && nextMarkOn(project, floorId, near);
  return doubt && fits !== undefined ? { ...doubt, rename: { mark: fits, says: `Mark it ${fits}` } } : doubt;
}
