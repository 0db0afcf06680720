import { isPlanKey } from '../logic/planKeys.ts';
import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { candidates, matches } from '../devices/candidates.ts';
import type { Condition, Readable } from '../logic/condition.ts';
import type { VerdictWord } from '../logic/verdict.ts';
import { allRules } from './all.ts';
import { casesOf, idsWithCases } from './allCases.ts';

const ids = allRules.map((rule) => rule.id);

/** Such a clause always has an answer: what it compares it also asks the standing of. */
function asksOnlyWhetherKnown(condition: Condition): boolean {
  const asked = new Set<Readable>();
  const compared = new Set<Readable>();
  const walk = (one: Condition): void => {
    if (one.op === 'known') asked.add(one.fact);
    else if (one.op === 'is' || one.op === 'compare') compared.add(one.fact);
    else if (one.op === 'not') walk(one.of);
    else if (one.op === 'all' || one.op === 'any') one.of.forEach(walk);
  };
  walk(condition);
  // What the plan says is never unknown.
  return [...compared].every((fact) => asked.has(fact) || isPlanKey(fact));
}

test('no id is used twice', () => {
  expect(
    ids.filter((id, index) => ids.indexOf(id) !== index),
    'give the newer rule a new id',
  ).toEqual([]);
});

test('every rule file is in its family’s list', () => {
  const here = new URL('.', import.meta.url);
  const files = readdirSync(here, { recursive: true })
    .map(String)
    .filter((path) => /[A-Z]-\d+.*\.ts$/.test(path) && !path.endsWith('.cases.ts'));
  const named = new Set(files.map((path) => /([A-Z]+-\d+)/.exec(path)?.[1]));
  expect(named, 'add the file to the list.ts of its folder').toEqual(new Set(ids));
  expect(files.length, 'two files carry one id').toBe(ids.length);
  expect(new Set(idsWithCases), 'add the file of its cases to the caseList.ts of its folder').toEqual(
    new Set(ids),
  );
});

describe.each(allRules.map((rule) => [rule.id, rule] as const))('%s', (_id, rule) => {
  test('cites at least one source', () => {
    expect(rule.cites.length, 'add a cite; for physics cite text("practice", "")').toBeGreaterThan(0);
  });
  test.each(rule.clauses.map((clause) => [clause.key ?? '', clause] as const))(
    'clause "%s" is complete',
    (key, clause) => {
      expect(rule.clauses.length > 1 && key === '', 'give each clause a key').toBe(false);
      const answers = new Set(
        casesOf(rule)
          .filter((one) => (one.clause ?? '') === key)
          .map((one) => one.expect),
      );
      const wanted = [
        'yes',
        ...(clause.when.op === 'always' ? [] : ['no']),
        ...(asksOnlyWhetherKnown(clause.when) ? [] : ['unknown']),
      ];
      expect(
        wanted.filter((answer) => !answers.has(answer as VerdictWord)),
        'add the missing case beside the rule',
      ).toEqual([]);
      expect(
        casesOf(rule).some((one) => (one.clause ?? '') === key && one.does !== undefined),
        'let a case that expects yes say what the clause does',
      ).toBe(true);
      expect(clause.says.endsWith('.'), 'a sentence ends with a full stop').toBe(true);
      expect(
        candidates.some((candidate) => matches(clause.of ?? {}, candidate)),
        'the clause speaks of no candidate',
      ).toBe(true);
    },
  );
  test('what rests on memory alone only cautions, asks or refuses on the safe side', () => {
    if (rule.confidence !== 'memory' && rule.confidence !== 'inferred') return;
    const permits = rule.clauses.filter((clause) => clause.effect === 'permit');
    expect(permits, 'a rule from memory must not wave something through').toEqual([]);
  });
});
