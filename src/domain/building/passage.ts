import type { ConditionId } from '../simulate/conditions.ts';
import { standing } from '../simulate/simulate.ts';
import { type Edge, factOf, type Plan } from './plan.ts';

/** How a person gets through in one direction, from best to worst. */
export const FREE = 0;
/** Free after the delay. */
export const AFTER = 1;
export const STAFF = 2;
/** Nothing is chosen here, or it leads to a place nobody stated. */
export const NOT_SAID = 3;
export const SHUT = 4;
export type Grade = typeof FREE | typeof AFTER | typeof STAFF | typeof NOT_SAID | typeof SHUT;

/** As much of an opening as decides how it is passed. */
type Lock = Pick<Edge, 'decision' | 'simulated' | 'bothWays'>;

/** All openings in one condition, in the order of the plan's edges. */
export interface Passages {
  /** to → from, the way people leave. */
  readonly out: Uint8Array;
  /** from → to, past the lock. */
  readonly into: Uint8Array;
  /** Equal for conditions in which every opening does the same. */
  readonly key: string;
}

export function passagesIn(plan: Plan, condition: ConditionId): Passages {
  const out = new Uint8Array(plan.edges.length);
  const into = new Uint8Array(plan.edges.length);
  plan.edges.forEach((edge, index) => {
    out[index] = outGrade(edge, condition);
    into[index] = intoGrade(edge, condition);
  });
  let key = '';
  for (let index = 0; index < out.length; index++) {
    key += String.fromCharCode(48 + (out[index] as number) * 5 + (into[index] as number));
  }
  return { out, into, key };
}

/** How one opening is left by, with the lock or against it. */
export function exitThrough(edge: Lock, condition: ConditionId, against: boolean): Grade {
  return against ? intoGrade(edge, condition) : outGrade(edge, condition);
}

function outGrade({ simulated }: Lock, condition: ConditionId): Grade {
  if (!simulated) return NOT_SAID;
  switch (standing(simulated.outcomes, condition).exit) {
    case 'free':
      return FREE;
    case 'after':
      return AFTER;
    case 'byStaff':
      return STAFF;
    case 'blocked':
    case 'none':
      return SHUT;
  }
}

function intoGrade(edge: Lock, condition: ConditionId): Grade {
  const { simulated } = edge;
  if (!simulated) return NOT_SAID;
  // Each leaf of a double-egress pair opens one way, and each way is the way out of one side.
  if (edge.bothWays && factOf(edge, 'doorType') === 'doubleEgressPair') return outGrade(edge, condition);
  // Where people leave both ways, what lets go of both sides lets these out as it lets out the others.
  const out = standing(simulated.outcomes, condition);
  if (out.entry === 'unlocked') return FREE;
  const { arrangement } = simulated;
  return edge.bothWays && arrangement.releaseOnBothSides && out.exit !== 'free'
    ? outGrade(edge, condition)
    : SHUT;
}
