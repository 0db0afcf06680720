import { type Candidate, candidateById } from '../devices/candidates.ts';
import { trades } from '../devices/items.ts';
import type { FactKey } from '../model/fields.ts';
import type { Opening, Project } from '../model/project.ts';
import { type Change, possibleChanges } from './changes.ts';
import { decide } from './decide.ts';
import type { Decision } from './decision.ts';
import { surveyedFacts } from './ruleBook.ts';
import { valueIn } from './factView.ts';
import { answered } from './whatMatters.ts';

/** The smallest work that admits an arrangement which is ruled out now. */
export interface Admission {
  readonly candidate: Candidate;
  readonly changes: readonly Change[];
}

export type Search =
  | { readonly found: true; readonly changes: readonly Change[] }
  /** Nothing up to the bound admits it: the place, the use or the code stands against it. */
  | { readonly found: false; readonly tried: number };

/** More changes than this at one door is another door. */
export const mostChanges = 3;
/** Decisions tried before the search gives up, so that a screen never waits long. */
const mostTries = 4000;

/**
 * Fewest changes first, and among equally many the least work. Only facts that the rejection reads are changed,
 * and each change must be work somebody can do. Admitted means: no longer forbidden, and no answer missing.
 */
export function smallestChange(
  project: Project,
  opening: Opening,
  decision: Decision,
  candidate: Candidate,
): Search {
  const because = decision.rejected.find((one) => one.candidate === candidate)?.because ?? [];
  const touched = new Set<FactKey>(because.flatMap((step) => surveyedFacts(step.clause.when)));
  const useful = possibleChanges.filter(
    (one) => touched.has(one.fact) && valueIn(decision.slots, one.fact) !== one.value,
  );
  let tried = 0;
  for (let size = 1; size <= mostChanges; size++) {
    const sets = combinations(useful, size).sort((a, b) => effortOf(a) - effortOf(b));
    for (const changes of sets) {
      if (tried++ >= mostTries) return { found: false, tried };
      if (admits(project, opening, changes, candidate)) return { found: true, changes };
    }
  }
  return { found: false, tried };
}

function admits(
  project: Project,
  opening: Opening,
  changes: readonly Change[],
  candidate: Candidate,
): boolean {
  let changed: [Project, Opening] = [project, { ...opening, override: null }];
  for (const one of changes) changed = answered(...changed, one.fact, one.value);
  const after = decide(...changed);
  return (
    after.state !== 'refused' &&
    after.state !== 'referred' &&
    !after.rejected.some((one) => one.candidate === candidate) &&
    !after.open.some((one) => one.candidate === candidate)
  );
}

function effortOf(changes: readonly Change[]): number {
  return changes.reduce((sum, one) => sum + one.effort, 0);
}

/** Sets of changes of one size, never two values for one fact. */
function combinations(from: readonly Change[], size: number): Change[][] {
  if (size === 0) return [[]];
  return from.flatMap((first, index) =>
    combinations(from.slice(index + 1), size - 1)
      .filter((rest) => rest.every((one) => one.fact !== first.fact))
      .map((rest) => [first, ...rest]),
  );
}

/** The same search by the candidate's id; a candidate that is not ruled out needs no change. */
export function searchFor(
  project: Project,
  opening: Opening,
  decision: Decision,
  candidateId: string,
): Search {
  const candidate = candidateById(candidateId);
  return candidate ? smallestChange(project, opening, decision, candidate) : { found: false, tried: 0 };
}

/** The work as lines for the trades, or one line saying that no work up to the bound helps. */
export function admissionInWords(search: Search): readonly string[] {
  if (search.found) return search.changes.map((one) => `${trades[one.trade]}: ${one.says}`);
  return [
    `No ${mostChanges} changes that work can make would admit it (${search.tried} combinations tried): the place, the use or the code stands against it.`,
  ];
}
