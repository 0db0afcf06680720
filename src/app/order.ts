import { type Opening, openingsInOrder, type Project } from '../domain/model/project.ts';
import { rememberLast } from './rememberLast.ts';

interface Order {
  readonly floors: Project['floors'];
  readonly openings: readonly Opening[];
}

/**
 * All openings in the order of the schedule. Sorting marks as people count costs more than deciding one door, and an
 * answer moves no door: while ids, marks and floors are the same, the order is too.
 */
export function rememberOrder(): (project: Project) => readonly Opening[] {
  let last: Order | undefined;
  return rememberLast((project) => {
    const openings = (last && stillInOrder(last, project)) ?? openingsInOrder(project);
    last = { floors: project.floors, openings };
    return openings;
  });
}

/** Today's openings in the remembered order; undefined when they have to be sorted again. */
function stillInOrder({ floors, openings }: Order, project: Project): readonly Opening[] | undefined {
  if (floors !== project.floors || openings.length !== Object.keys(project.openings).length) return undefined;
  const now: Opening[] = [];
  for (const before of openings) {
    const one = project.openings[before.id];
    if (!one || one.mark !== before.mark || one.floorId !== before.floorId) return undefined;
    now.push(one);
  }
  return now;
}

export const orderedOpenings = rememberOrder();
