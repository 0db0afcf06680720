import { describe, expect, test } from 'vitest';
import { allRules } from './all.ts';
import { casesOf } from './allCases.ts';
import { clauseOf, doesOf, runCase } from './runCase.ts';

describe.each(allRules.map((rule) => [rule.id, rule] as const))('%s', (_id, rule) => {
  test.each(casesOf(rule).map((one) => [`${one.clause ?? ''} ${one.name} → ${one.expect}`, one] as const))(
    '%s',
    (_name, one) => {
      expect(runCase(rule, one)).toBe(one.expect);
      if (one.does === undefined) return;
      expect(one.expect, 'a clause that does not apply does nothing').toBe('yes');
      expect(new Set([doesOf(clauseOf(rule, one.clause))].flat())).toEqual(new Set([one.does].flat()));
    },
  );
});
