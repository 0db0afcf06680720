import { describe, expect, test } from 'vitest';
import { allRules } from './all.ts';
import { runCase } from './runCase.ts';

describe.each(allRules.map((rule) => [rule.id, rule] as const))('%s', (_id, rule) => {
  test.each(rule.cases.map((one) => [`${one.clause ?? ''} ${one.name} → ${one.expect}`, one] as const))(
    '%s',
    (_name, one) => {
      expect(runCase(rule, one)).toBe(one.expect);
    },
  );
});
