import { candidateById } from '../devices/candidates.ts';
import { openDifferencesAt } from '../merge/differences.ts';
import type { Opening, Project } from '../model/project.ts';

/** What a person must know before trusting what stands here: one sentence, about one opening or the whole project. */
export interface Doubt {
  /** Null concerns every opening. */
  readonly openingId: string | null;
  readonly says: string;
}

/**
 * What a file held and could not be read, and what an open file holds that no edit here would allow. The first was
 * taken out and waits in the project; the second stands, because only a person can say which of two is meant.
 */
export function doubtsOf(project: Project): readonly Doubt[] {
  return [
    ...(project.setAside ?? []).map((one) => ({
      openingId: one.openingId ?? null,
      says: `${one.where}: ${one.says}`,
    })),
    ...floorDoubts(project),
    ...Object.values(project.spaces)
      .filter((space) => space.floorId !== null && !Object.hasOwn(project.floors, space.floorId))
      .map((space) => ({
        openingId: null,
        says: `Space ${space.name} lies on a floor that is not in the project.`,
      })),
    ...markDoubts(project),
    ...Object.values(project.openings).flatMap((opening) => openingDoubts(project, opening)),
  ];
}

/** Those of one opening, and those that concern all. */
export function doubtsAt(doubts: readonly Doubt[], openingId: string): readonly string[] {
  return doubts.filter((one) => one.openingId === null || one.openingId === openingId).map((one) => one.says);
}

/** Groups of several that share what should be each one's own. */
function shared<T>(all: Readonly<Record<string, T>>, key: (one: T) => string | number): readonly T[][] {
  const groups = new Map<string | number, T[]>();
  for (const one of Object.values(all)) {
    const group = groups.get(key(one));
    if (group) group.push(one);
    else groups.set(key(one), [one]);
  }
  return [...groups.values()].filter((group) => group.length > 1);
}

function floorDoubts(project: Project): readonly Doubt[] {
  return shared(project.floors, (floor) => floor.level).map((floors) => ({
    openingId: null,
    says: `Floors ${floors.map((floor) => floor.name).join(' and ')} have the same level in the building.`,
  }));
}

function markDoubts(project: Project): readonly Doubt[] {
  return shared(project.openings, (opening) => opening.mark).flatMap((openings) =>
    openings.map(({ id, mark }) => ({
      openingId: id,
      says: `Mark ${mark} stands at ${openings.length} openings. Give each a mark of its own.`,
    })),
  );
}

function openingDoubts(project: Project, opening: Opening): readonly Doubt[] {
  const missing = [
    ...(opening.floorId !== null && !Object.hasOwn(project.floors, opening.floorId) ? ['Its floor'] : []),
    ...(opening.fromSpaceId !== null && !Object.hasOwn(project.spaces, opening.fromSpaceId)
      ? ['The space it is entered from']
      : []),
    ...(opening.toSpaceId !== null && !Object.hasOwn(project.spaces, opening.toSpaceId)
      ? ['The space it leads into']
      : []),
  ].map((what) => `${what} is not in the project. Choose it again.`);
  const byHand = handChoiceDoubt(opening);
  const twice = openDifferencesAt(project, opening.id);
  return [...missing, ...(byHand === undefined ? [] : [byHand]), ...twice].map((says) => ({
    openingId: opening.id,
    says,
  }));
}

/** A person's choice that nothing here can follow. */
export function handChoiceDoubt({ override }: Opening): string | undefined {
  if (override === null || candidateById(override.candidate)) return undefined;
  return `${override.by || 'Somebody'} chose “${override.candidate}” by hand, which this version does not recognize. The choice is kept, and the decision here is made without it.`;
}
