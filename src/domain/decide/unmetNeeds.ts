import { type Candidate, candidates } from '../devices/candidates.ts';
import { type FactKey, fieldInfo } from '../model/fields.ts';
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
  readonly sentence: string;
  readonly ruleId: string | undefined;
}

/**
 * Recorded needs that the choice does not meet: because everything that would is ruled out, with the rules that did it,
 * or because what would meet them ranks below it.
 */
export function unmetNeeds(decision: Decision): readonly UnmetNeed[] {
  const { chosen, slots, rejected, requires, state } = decision;
  if (!chosen && state !== 'none') return [];
  return needs.flatMap(({ fact, values, metBy }) => {
    if (!values.includes(valueIn(slots, fact)) || (chosen && metBy(chosen.candidate))) return [];
    const byHand = requires.some(
      ({ clause }) => clause.effect === 'require' && clause.items.includes('lockFromInside'),
    );
    if (fact === 'wishLockdown' && byHand) return [];
    const wanted = candidates.filter(metBy);
    const refused = rejected.filter(({ candidate }) => metBy(candidate));
    const name = fieldInfo(fact).label;
    // What is in doubt meets nothing yet, and an answer that rules it out asks for no new signature.
    const doubted =
      refused.length < wanted.length ? decision.open.filter(({ candidate }) => metBy(candidate)) : [];
    if (refused.length + doubted.length < wanted.length) {
      const why =
        fact === 'wishLockdown'
          ? 'and this lock is thrown only by hand; a lock that takes the command is allowed here and ranks below it'
          : 'and not met by what leads; an arrangement that meets it is allowed here and ranks below it';
      return [{ fact, sentence: `${name}: recorded as needed, ${why}.`, ruleId: undefined }];
    }
    const reasons = [...refused, ...doubted].map(({ because }) => [
      ...new Set(because.map((step) => step.rule.id)),
    ]);
    const fewest = reasons.toSorted((a, b) => a.length - b.length)[0] ?? [];
    return [
      {
        fact,
        sentence: `${name}: recorded as needed and not met here, ${doubted.length > 0 ? 'ruled out or in doubt' : 'ruled out'} by ${fewest.join(', ')}.`,
        ruleId: fewest[0],
      },
    ];
  });
}
