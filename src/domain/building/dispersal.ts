import { limitValue } from '../codes/limits.ts';
import { endsTheWay } from '../model/project.ts';
import type { Severity } from '../simulate/outcome.ts';
import { factOf, type Plan } from './plan.ts';

/** A yard where people wait instead of reaching the public way, against the room they need there. */
export interface Dispersal {
  readonly yard: string;
  /** The larger of what the gate serves and the yard holds; null is unknown. */
  readonly people: number | null;
  readonly areaFt2: number | null;
  readonly ft2PerPerson: number;
  readonly neededFt2: number | null;
  readonly severity: Severity;
}

/**
 * Where the way ends at locked gates of one yard that is recorded as an accepted safe dispersal area: whether it is
 * large enough. Undefined where no such area is recorded.
 */
export function dispersalOf(plan: Plan, shut: readonly number[]): Dispersal | undefined {
  const gates = shut.flatMap((index) => plan.edges[index] ?? []);
  const yard = plan.spaces[gates[0]?.to ?? -1];
  if (!yard || endsTheWay(yard) || !outdoors.includes(yard.kind)) return undefined;
  const accepted = gates.every(
    (gate) => plan.spaces[gate.to] === yard && factOf(gate, 'safeDispersalArea') === true,
  );
  if (!accepted) return undefined;
  const loads = gates.flatMap((gate) => factOf(gate, 'occupantLoad') ?? []);
  const people = loads.length === 0 ? null : Math.max(...loads);
  const ft2PerPerson = limitValue('dispersalFt2PerPersonIbc', plan.project.basis, 'the building');
  const neededFt2 = people === null ? null : people * ft2PerPerson;
  const { areaFt2 } = yard;
  const known = neededFt2 !== null && areaFt2 !== null;
  return {
    yard: yard.name,
    people,
    areaFt2,
    ft2PerPerson,
    neededFt2,
    severity: !known ? 'serious' : areaFt2 < neededFt2 ? 'severe' : 'note',
  };
}
const outdoors: readonly string[] = ['outside', 'court', 'roof'];
