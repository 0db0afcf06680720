import type { Edit } from '../commands/command.ts';
import { counted } from '../text/counted.ts';
import { compareMarks, type Floor, type Project, type SecurityLevel, type Space } from '../model/project.ts';

export const securityLevelWords: Readonly<Record<SecurityLevel, string>> = {
  public: 'Public',
  general: 'General',
  staff: 'Staff',
  restricted: 'Restricted',
  critical: 'Critical',
};

export function floorsInOrder(project: Project): readonly Floor[] {
  return Object.values(project.floors).toSorted((a, b) => a.level - b.level);
}

export function spacesInOrder(project: Project): readonly Space[] {
  const level = (space: Space) => {
    const floor = space.floorId === null ? undefined : project.floors[space.floorId];
    return floor ? floor.level : Number.POSITIVE_INFINITY;
  };
  return Object.values(project.spaces).toSorted((a, b) => {
    const [first, second] = [level(a), level(b)];
    return first === second ? compareMarks(a.name, b.name) : first - second;
  });
}

export type Read<T> = { readonly ok: true; readonly value: T } | Refusal;
export interface Refusal {
  readonly ok: false;
  readonly field: string;
  readonly says: string;
}
export const refuse = (field: string, says: string): Refusal => ({ ok: false, field, says });

/** The new floor lies above all others; its place can be changed afterward. */
export function newFloor(project: Project, id: string, name: string): Read<Floor> {
  const problem = floorNameProblem(project, id, name);
  if (problem !== undefined) return refuse('name', problem);
  const levels = Object.values(project.floors).map((floor) => floor.level);
  const level = levels.length === 0 ? 1 : Math.max(...levels) + 1;
  return { ok: true, value: { id, name: name.trim(), level } };
}

export function floorNameProblem(project: Project, id: string, name: string): string | undefined {
  const wanted = name.trim();
  if (wanted === '') return 'A floor needs a name.';
  const other = Object.values(project.floors).find((floor) => floor.id !== id && floor.name === wanted);
  return other ? `There is a floor ${wanted} already.` : undefined;
}

/** Two floors change places. Nothing when there is none above or below. */
export function moveFloor(project: Project, id: string, way: 'up' | 'down'): readonly Edit[] {
  const order = floorsInOrder(project);
  const at = order.findIndex((floor) => floor.id === id);
  const [floor, other] = [order[at], order[at + (way === 'up' ? 1 : -1)]];
  if (!floor || !other) return [];
  return [
    { kind: 'putFloor', id: floor.id, value: { ...floor, level: other.level } },
    { kind: 'putFloor', id: other.id, value: { ...other, level: floor.level } },
  ];
}

/** Why the floor cannot go yet; undefined when nothing stands on it. */
export function standsOnFloor(project: Project, id: string): string | undefined {
  const openings = Object.values(project.openings).filter((one) => one.floorId === id);
  const spaces = Object.values(project.spaces).filter((one) => one.floorId === id);
  const parts = [
    ...(openings.length > 0
      ? [
          some(
            openings.map((one) => one.mark),
            'opening',
          ),
        ]
      : []),
    ...(spaces.length > 0
      ? [
          some(
            spaces.map((one) => one.name),
            'space',
          ),
        ]
      : []),
  ];
  const name = project.floors[id]?.name ?? 'The floor';
  return parts.length === 0
    ? undefined
    : `${name} cannot be removed while something stands on it: ${parts.join('; ')}.`;
}

export function standsAtSpace(project: Project, id: string): string | undefined {
  const openings = Object.values(project.openings).filter(
    (one) => one.fromSpaceId === id || one.toSpaceId === id,
  );
  if (openings.length === 0) return undefined;
  const name = project.spaces[id]?.name ?? 'The space';
  return `${name} cannot be removed while openings lead to it: ${some(
    openings.map((one) => one.mark),
    'opening',
  )}.`;
}

function some(names: readonly string[], what: string): string {
  const shown = names.toSorted(compareMarks).slice(0, 5).join(', ');
  const rest = names.length > 5 ? ` and ${names.length - 5} more` : '';
  return `${counted(names.length, what)} (${shown}${rest})`;
}
