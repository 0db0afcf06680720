import { candidates, type Release } from '../devices/candidates.ts';
import { type FactKey, fieldInfo } from '../model/fields.ts';
import type { Decision } from './decision.ts';
import { valueIn } from './factView.ts';

/** What a survey records as wanted, with the releases that would meet it. */
const needs: readonly {
  readonly fact: FactKey;
  readonly values: readonly unknown[];
  readonly metBy: readonly Release[];
}[] = [
  { fact: 'wishDelayedEgress', values: [true], metBy: ['delayed'] },
  { fact: 'wishControlledEgress', values: [true], metBy: ['controlled', 'clinical'] },
  { fact: 'wishKeyLock', values: [true], metBy: ['keyInside'] },
  { fact: 'clinicalNeed', values: ['containment', 'securityThreat'], metBy: ['controlled', 'clinical'] },
];

export interface UnmetNeed {
  readonly fact: FactKey;
  readonly sentence: string;
  readonly ruleId: string | undefined;
}

/** Recorded needs that the choice does not meet because everything that would is ruled out, with the rules that did it. */
export function unmetNeeds({ chosen, slots, rejected }: Decision): readonly UnmetNeed[] {
  if (!chosen) return [];
  return needs.flatMap(({ fact, values, metBy }) => {
    if (!values.includes(valueIn(slots, fact)) || metBy.includes(chosen.candidate.release)) return [];
    const wanted = candidates.filter(({ release }) => metBy.includes(release));
    const refused = rejected.filter(({ candidate }) => metBy.includes(candidate.release));
    if (refused.length < wanted.length) return [];
    const reasons = refused.map(({ because }) => [...new Set(because.map((step) => step.rule.id))]);
    const fewest = reasons.toSorted((a, b) => a.length - b.length)[0] ?? [];
    return [
      {
        fact,
        sentence: `${fieldInfo(fact).label}: recorded as needed and not met here, ruled out by ${fewest.join(', ')}.`,
        ruleId: fewest[0],
      },
    ];
  });
}
