import {
  type CodeBasis,
  ibcEditions,
  necEditions,
  nfpa101Editions,
  nfpa72Editions,
} from '../../src/domain/codes/basis.ts';
import { limitValue } from '../../src/domain/codes/limits.ts';
import { type CandidateMatch, candidates, matches } from '../../src/domain/devices/candidates.ts';
import { type ItemId, items, type Trade, trades } from '../../src/domain/devices/items.ts';
import type { Comparison, Condition, EditionBook, Readable } from '../../src/domain/logic/condition.ts';
import { factKeys, fieldInfo, isFactKey } from '../../src/domain/model/fields.ts';
import type { Effect, Grade } from '../../src/domain/rules/rule.ts';

/** One small change of a condition. It is settled per basis, because a bound may differ from edition to edition. */
export interface ConditionMutant {
  readonly says: string;
  readonly when: (basis: CodeBasis) => Condition;
}
export interface MatchMutant {
  readonly says: string;
  readonly of: CandidateMatch | undefined;
}
export interface EffectMutant {
  readonly says: string;
  readonly kind: 'items' | 'effect';
  readonly effect: Effect;
}

type Change = (basis: CodeBasis) => Condition;
const negated = (of: Condition): Condition => ({ op: 'not', of });
const flipped: Record<Comparison, Comparison> = {
  atLeast: 'over',
  over: 'atLeast',
  atMost: 'under',
  under: 'atMost',
};

/** Every mutant of a condition: each leaf, each list and each range changed once. */
export function conditionMutants(condition: Condition): readonly ConditionMutant[] {
  return list(condition, (changed) => changed);
}

function list(condition: Condition, around: (part: Condition) => Condition): ConditionMutant[] {
  const change = (says: string, make: Change): ConditionMutant => ({
    says,
    when: (basis) => around(make(basis)),
  });
  const same = (says: string, changed: Condition) => change(says, () => changed);
  const name = nameOf(condition);
  switch (condition.op) {
    case 'always':
      return [same('always → never', negated(condition))];
    case 'known':
      return [same(`${name} negated`, negated(condition))];
    case 'is':
      return [
        same(`${name} negated`, negated(condition)),
        ...(condition.values.length < 2 ? [] : condition.values).map((value) =>
          same(`${name} without ${value}`, {
            ...condition,
            values: condition.values.filter((other) => other !== value),
          }),
        ),
      ];
    case 'compare': {
      const step = stepOf(condition.fact);
      const moved = (by: number): Change => {
        return (basis) => ({
          ...condition,
          bound:
            (typeof condition.bound === 'number'
              ? condition.bound
              : limitValue(condition.bound, basis, 'mutant')) + by,
        });
      };
      return [
        same(`${name} negated`, negated(condition)),
        same(`${name} → ${flipped[condition.how]}`, { ...condition, how: flipped[condition.how] }),
        change(`${name} bound + ${step}`, moved(step)),
        change(`${name} bound − ${step}`, moved(-step)),
      ];
    }
    case 'edition':
      return [
        same(`${name} negated`, negated(condition)),
        ...shifted(condition).map((other) => same(`${name} → ${nameOf(other)}`, other)),
      ];
    case 'not':
      return [
        same(`${name}: “not” dropped`, condition.of),
        ...list(condition.of, (part) => around(negated(part))),
      ];
    case 'all':
    case 'any': {
      const { op, of } = condition;
      const swapped = op === 'all' ? 'any' : 'all';
      const put = (index: number) => (part: Condition) =>
        around({ op, of: of.map((other, at) => (at === index ? part : other)) });
      return [
        ...(of.length < 2 ? [] : [same(`${name} → ${swapped}`, { op: swapped, of })]),
        ...(of.length < 2 ? [] : of).map((part, index) =>
          same(`${name} without ${nameOf(part)}`, { op, of: of.filter((_other, at) => at !== index) }),
        ),
        ...of.flatMap((part, index) => list(part, put(index))),
      ];
    }
  }
}

/** Lengths are measured to a sixteenth of an inch; everything else is counted. */
function stepOf(fact: Readable): number {
  return isFactKey(fact) && fieldInfo(fact).unit === 'in' ? 0.0625 : 1;
}

const editions: Record<EditionBook, readonly number[]> = {
  ibc: ibcEditions,
  nfpa101: nfpa101Editions,
  nec: necEditions,
  nfpa72: nfpa72Editions,
};

/** Either end one edition further or nearer, where there is one. */
function shifted(range: Extract<Condition, { op: 'edition' }>): Condition[] {
  const years = editions[range.book];
  const beside = (year: number) => {
    const at = years.indexOf(year);
    return [years[at - 1], years[at + 1]].filter((other) => other !== undefined);
  };
  return [
    ...(range.from === undefined ? [] : beside(range.from).map((from) => ({ ...range, from }))),
    ...(range.to === undefined ? [] : beside(range.to).map((to) => ({ ...range, to }))),
  ];
}

function nameOf(condition: Condition): string {
  switch (condition.op) {
    case 'is':
      return `${condition.fact} = ${condition.values.join('/')}`;
    case 'compare':
      return `${condition.fact} ${condition.how} ${condition.bound}`;
    case 'known':
      return `${condition.fact} known`;
    case 'edition':
      return `${condition.book} ${condition.from ?? ''}–${condition.to ?? ''}`;
    case 'not':
      return `not (${nameOf(condition.of)})`;
    case 'all':
    case 'any':
      return `${condition.op} of ${condition.of.length}`;
    case 'always':
      return 'always';
  }
}

/** Every mutant of what a clause speaks of that would let it speak of other candidates. */
export function matchMutants(of: CandidateMatch): readonly MatchMutant[] {
  return partsDropped(of).filter((mutant) =>
    candidates.some(
      (candidate) => matches(of, candidate) !== (mutant.of === undefined || matches(mutant.of, candidate)),
    ),
  );
}

function partsDropped(of: CandidateMatch): MatchMutant[] {
  return (Object.entries(of) as [keyof CandidateMatch, unknown][]).flatMap(([part, value]) => {
    const { [part]: _gone, ...rest } = of;
    const whole: MatchMutant = { says: `of: without ${part}`, of: rest };
    if (part === 'not') {
      const inner = partsDropped(value as CandidateMatch).map(({ says, of: not }) => ({
        says: `not ${says}`,
        of: { ...rest, ...(not && { not }) },
      }));
      return [whole, ...inner];
    }
    if (!Array.isArray(value)) {
      return [whole, { says: `of: ${part} turned`, of: { ...rest, [part]: value !== true } }];
    }
    const entries = (value.length < 2 ? [] : (value as readonly string[])).map((entry) => ({
      says: `of: ${part} without ${entry}`,
      of: { ...rest, [part]: value.filter((other) => other !== entry) } as CandidateMatch,
    }));
    return [whole, ...entries];
  });
}

/** Every mutant of what a clause does: a part less, a part for another, a softer or harder word, another name in it. */
export function effectMutants(effect: Effect): readonly EffectMutant[] {
  const changed = (says: string, other: Effect): EffectMutant => ({ says, kind: 'effect', effect: other });
  const softer = changed(`${effect.effect} → caution`, { effect: 'caution' });
  switch (effect.effect) {
    case 'require':
      return [...itemMutants(effect.items), softer];
    case 'modify':
      return [
        ...others<Trade>(Object.keys(trades) as Trade[], effect.trade).map((trade) =>
          changed(`modify by ${effect.trade} → ${trade}`, { effect: 'modify', trade }),
        ),
        softer,
      ];
    case 'signOff':
      return [
        ...others<Grade>(['must', 'should', 'note'], effect.grade).map((grade) =>
          changed(`signOff ${effect.grade} → ${grade}`, { effect: 'signOff', grade }),
        ),
        softer,
      ];
    case 'finding': {
      const { field, severity } = effect;
      const turned = severity === 'refuse' ? 'warn' : 'refuse';
      const beside = next(factKeys, [field]);
      return [
        changed(`finding ${severity} → ${turned}`, { effect: 'finding', field, severity: turned }),
        changed(`finding at ${field} → ${beside}`, { effect: 'finding', field: beside, severity }),
        softer,
      ];
    }
    case 'caution':
      return [
        changed('caution → prohibit', { effect: 'prohibit' }),
        changed('caution → permit', { effect: 'permit' }),
      ];
    case 'prohibit':
    case 'permit':
    case 'refer':
      return [softer];
  }
}

function itemMutants(list: readonly ItemId[]): readonly EffectMutant[] {
  const all = Object.keys(items) as ItemId[];
  return list.flatMap((item): EffectMutant[] => {
    const rest = list.filter((other) => other !== item);
    const instead = next(all, list, item);
    return [
      { says: `items without ${item}`, kind: 'items', effect: { effect: 'require', items: rest } },
      {
        says: `items: ${instead} for ${item}`,
        kind: 'items',
        effect: { effect: 'require', items: [...rest, instead] },
      },
    ];
  });
}

function others<T>(all: readonly T[], own: T): readonly T[] {
  return all.filter((one) => one !== own);
}

/** The one that stands after `own` in the list, passing over those that are taken. */
function next<T>(all: readonly T[], taken: readonly T[], own: T | undefined = taken[0]): T {
  const from = all.findIndex((one) => one === own);
  const turned = [...all.slice(from + 1), ...all.slice(0, from)];
  return turned.find((one) => !taken.includes(one)) as T;
}
