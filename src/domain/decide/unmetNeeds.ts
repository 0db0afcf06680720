import { type Candidate, candidates } from '../devices/candidates.ts';
import type { FactKey } from '../model/fields.ts';
import type { Decision } from './decision.ts';
import { valueIn } from '../logic/slots.ts';

/** What a survey records as wanted, with the arrangements that would meet it. */
const needs: readonly {
  readonly fact: FactKey;
  readonly values: readonly unknown[];
  readonly metBy: (candidate: Candidate) => boolean;
}[] = [
  { fact: 'wishDelayedEgress', values: [true], metBy: ({ release }) => release === 'delayed' },
  {
    fact: 'wishControlledEgress',
    values: [true],
    metBy: ({ release }) => release === 'controlled' || release === 'clinical' || release === 'attended',
  },
  { fact: 'wishKeyLock', values: [true], metBy: ({ release }) => release === 'keyInside' },
  {
    fact: 'clinicalNeed',
    values: ['containment', 'securityThreat'],
    metBy: ({ release }) => release === 'controlled' || release === 'clinical',
  },
  {
    fact: 'clinicalNeed',
    values: ['protection'],
    metBy: ({ release }) => release === 'controlled' || release === 'delayed',
  },
  {
    // A battery lock hears the command by radio, a lever with a button inside is set by whoever is there (N-07).
    fact: 'wishLockdown',
    values: [true],
    metBy: ({ device: { wired, family } }) => wired || family === 'battery',
  },
];

export interface UnmetNeed {
  readonly fact: FactKey;
  /** Allowed and ranked below what leads, or ruled out, or ruled out as far as it is not in doubt. */
  readonly why: 'onlyByHand' | 'ranksBelow' | 'ruledOut' | 'inDoubt';
  /** The fewest rules that stand against one that would meet it; none where it is allowed. */
  readonly ruleIds: readonly string[];
  readonly ruleId: string | undefined;
}

/**
 * Recorded needs that the choice does not meet: because everything that would is ruled out, with the rules that did it,
 * or because what would meet them ranks below it.
 */
export function unmetNeeds(decision: Decision): readonly UnmetNeed[] {
  const { chosen, slots, rejected, requires, state } = decision;
  if (!chosen && state !== 'none') return [];
  return needs.flatMap(({ fact, values, metBy }): readonly UnmetNeed[] => {
    if (!values.includes(valueIn(slots, fact)) || (chosen && metBy(chosen.candidate))) return [];
    const byHand = requires.some(
      ({ clause }) => clause.effect === 'require' && clause.items.includes('lockFromInside'),
    );
    if (fact === 'wishLockdown' && byHand) return [];
    const wanted = candidates.filter(metBy);
    const refused = rejected.filter(({ candidate }) => metBy(candidate));
    // What is in doubt meets nothing yet, and an answer that rules it out asks for no new signature.
    const doubted =
      refused.length < wanted.length ? decision.open.filter(({ candidate }) => metBy(candidate)) : [];
    if (refused.length + doubted.length < wanted.length) {
      const why = fact === 'wishLockdown' ? 'onlyByHand' : 'ranksBelow';
      return [{ fact, why, ruleIds: [], ruleId: undefined }];
    }
    const reasons = [...refused, ...doubted].map(({ because }) => [
      ...new Set(because.map((step) => step.rule.id)),
    ]);
    const fewest = reasons.toSorted((a, b) => a.length - b.length)[0] ?? [];
    const why = doubted.length > 0 ? 'inDoubt' : 'ruledOut';
    return [{ fact, why, ruleIds: fewest, ruleId: fewest[0] }];
  });
}
