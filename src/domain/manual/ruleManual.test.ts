import { describe, expect, test } from 'vitest';
import { defaultBasis } from '../codes/basis.ts';
import { ruleGroups } from './ruleGroups.ts';
import {
  all,
  always,
  any,
  atLeast,
  ibc,
  is,
  isKnown,
  nfpa101,
  no,
  not,
  over,
  yes,
} from '../logic/condition.ts';
import { allRules, ruleById } from '../rules/all.ts';
import { casesOf } from '../rules/allCases.ts';
import { candidatesInWords } from './candidatesInWords.ts';
import { conditionInWords, conditionLine } from './conditionInWords.ts';
import { answerInWords, byFamily, isFound, manualCase, manualEntry, searchText } from './ruleManual.ts';
import type { Rule } from '../rules/rule.ts';
import { runCase } from '../rules/runCase.ts';

const line = (condition: Parameters<typeof conditionInWords>[0], basis = defaultBasis) =>
  conditionLine(conditionInWords(condition, basis));

describe('a condition in words', () => {
  test.each([
    ['door type is pair of leaves', is('doorType', 'pair')],
    ['door type is pair of leaves or double-egress pair', is('doorType', 'pair', 'doubleEgressPair')],
    ['door type is not pair of leaves', not(is('doorType', 'pair'))],
    ['sprinklered throughout: yes', yes('sprinklered')],
    ['sprinklered throughout: no', no('sprinklered')],
    ['sprinklered throughout: yes', not(no('sprinklered'))],
    ['no one leaves through the door', no('isEgress')],
    ['occupant load served is over 30 people', over('occupantLoad', 30)],
    ['occupant load served is at most 30 people', not(over('occupantLoad', 30))],
    ['occupant load served is at least 50 people (IBC 2021: 50)', atLeast('occupantLoad', 'panicLoadIbc')],
    ['fire rating of the door is not known', not(isKnown('fireRatingMin'))],
    ['IBC 2021 or later is adopted', ibc({ from: 2021, readTo: 2024 })],
    ['NFPA 101 is not adopted', not(nfpa101())],
    ['always', always],
  ])('%s', (says, condition) => {
    expect(line(condition)).toBe(says);
  });

  test('lists of one kind become one list, and a list of one its only part', () => {
    const nested = all(all(yes('sprinklered')), all(yes('highRise'), any(yes('fireAlarm'))));
    expect(line(nested)).toBe(
      'all of these: sprinklered throughout: yes; high-rise: yes; fire alarm system: yes',
    );
  });

  test('a denied list says what is denied, not that its parts are', () => {
    expect(line(not(all(yes('sprinklered'), yes('highRise'))))).toMatch(/^not all of these together: /);
    expect(line(not(any(yes('sprinklered'), yes('highRise'))))).toMatch(/^none of these: /);
  });

  test('a figure of a book that is not adopted is not passed off as adopted', () => {
    const basis = { ...defaultBasis, ibc: null };
    expect(line(atLeast('occupantLoad', 'panicLoadIbc'), basis)).toContain('not adopted here');
  });
});

describe('the manual', () => {
  test('has words for every rule of the book, with and without a basis', () => {
    const bad = allRules.flatMap((rule) =>
      [defaultBasis, null]
        .map((basis) => manualEntry(rule, basis))
        .filter(
          (entry) =>
            /undefined|\[object|\{\w+\}/.test(JSON.stringify(entry)) ||
            entry.clauses.some((clause) => conditionLine(clause.when) === ''),
        )
        .map((entry) => entry.id),
    );
    expect(bad).toEqual([]);
  });

  test('puts every rule into one chapter', () => {
    const ids = byFamily(allRules).flatMap(({ rules }) => rules.map((rule) => rule.id));
    expect(ids.toSorted()).toEqual(allRules.map((rule) => rule.id).toSorted());
  });

  test('finds a rule by its id, its title, a section and a word of its sentences', () => {
    const text = searchText(manualEntry(ruleById.get('R-31') as Rule, defaultBasis));
    const wanted = ['r-31', 'fail-safe strike', '716.2.6.1', 'latched'];
    expect(wanted.filter((one) => !isFound(text, one))).toEqual([]);
    expect(isFound(text, 'r-31 turnstile')).toBe(false);
  });

  test('cites the edition of the project', () => {
    const rule = ruleById.get('R-69') as Rule;
    expect(manualEntry(rule, { ...defaultBasis, ibc: 2018 }).cites[0]).toContain('2018 1010.1.10');
    expect(manualEntry(rule, defaultBasis).cites[0]).toContain('2021 1010.2.9');
    expect(manualEntry(rule, null).cites[0]).toContain('1010.1.10 (2018)');
  });

  test('a rule about an older edition cites that one under any basis', () => {
    const rule = ruleById.get('R-77') as Rule;
    for (const basis of [defaultBasis, { ...defaultBasis, ibc: null }, null]) {
      expect(manualEntry(rule, basis).cites[0]).toMatch(/^IBC 2018 1010\.1\.10\b/);
    }
  });

  test('says plainly what was not read in the code’s own text', () => {
    const said = (confidence: Rule['confidence']) =>
      manualEntry({ ...(ruleById.get('R-31') as Rule), confidence }, null).notRead;
    expect([said('read'), said('secondary'), said('memory'), said('inferred')]).toEqual([
      false,
      true,
      true,
      true,
    ]);
  });

  test('expects of each case what the rule answers', () => {
    const wrong = allRules.flatMap((rule) => {
      return casesOf(rule).flatMap((one) =>
        answerInWords(runCase(rule, one)) === manualCase(one).answer ? [] : [`${rule.id} ${one.name}`],
      );
    });
    expect(wrong).toEqual([]);
  });

  test('names no candidate by its internal id', () => {
    const named = allRules
      .flatMap((rule) => casesOf(rule).map(manualCase))
      .filter((one) => /\w+\/(safe|secure|asIs|none)\/\w+/.test(one.name));
    expect(named).toEqual([]);
  });

  test('an amendment of the project is a rule like any other', () => {
    const amendment = {
      id: 'm1',
      says: 'No magnets in this city.',
      source: 'Ordinance 7',
      effect: 'prohibit' as const,
      when: { doorType: 'pair' },
      devices: ['magnet'],
      releases: [],
      failModes: [],
    };
    const [local] = ruleGroups([amendment]);
    const entry = manualEntry(local?.rules[0] as Rule, defaultBasis);
    expect(entry.id).toBe('LOCAL-m1');
    expect(entry.clauses[0]?.effect).toBe('Prohibits');
    expect(conditionLine(entry.clauses[0]?.when ?? { kind: 'says', says: '' })).toBe(
      'door type is pair of leaves',
    );
  });
});

test('which arrangements a clause speaks of', () => {
  expect(candidatesInWords(undefined)).toBe('The opening, whatever is chosen');
  expect(candidatesInWords({ family: ['strike'], failMode: ['safe'] })).toMatch(
    /^Electric strikes; fail safe \(\d+ of \d+ arrangements\)$/,
  );
  expect(candidatesInWords({ not: { release: ['free'] } })).toMatch(
    /^Except released by free mechanical egress /,
  );
});
