import { doubleFaultIds } from '../simulate/conditions.ts';
import type { BuildingState } from './building.ts';
import type { BuildingFinding } from './finding.ts';
import { Gathered, idsOf, marksOf } from './gather.ts';
import type { Plan } from './plan.ts';
import { says } from './sentences.ts';

/** People against the doors they leave by, and what one lost exit does. */
export function crowdFindings(plan: Plan, states: readonly BuildingState[]): readonly BuildingFinding[] {
  const found = new Gathered();
  for (const { crowd, conditions } of states) {
    if (crowd.people === 0 || conditions.every((id) => doubleFaultIds.includes(id))) continue;
    const common = { conditions, spaceId: null, closing: null, path: [] };
    if (crowd.passed < crowd.people) {
      found.add({
        ...common,
        kind: 'tooNarrow',
        severity: 'serious',
        openingIds: idsOf(plan, crowd.narrow),
        says: says.tooNarrow(crowd.people, crowd.passed, marksOf(plan, crowd.narrow)),
      });
    }
    const [worst] = crowd.losses;
    if (!worst) continue;
    const mark = marksOf(plan, [worst.edge])[0] ?? '';
    const openingIds = idsOf(plan, [worst.edge]);
    if (crowd.losses.length === 1) {
      found.add({
        ...common,
        kind: 'oneExit',
        severity: 'note',
        openingIds,
        says: says.oneExit(mark, crowd.people),
      });
    } else if (worst.passed < crowd.people / 2) {
      found.add({
        ...common,
        kind: 'exitLost',
        severity: 'serious',
        openingIds,
        says: says.exitLost(mark, crowd.people, worst.passed),
      });
    }
  }
  return found.all();
}
