import { describe, expect, test } from 'vitest';
import { conditionMutants, effectMutants } from '../../scripts/proof/mutants.ts';
import { mutateClause, mutateDerived } from '../../scripts/proof/mutation.ts';
import { allRules } from '../../src/domain/rules/all.ts';
import { all, ibc, is, not, over } from '../../src/domain/logic/condition.ts';
import { derivedKeys } from '../../src/domain/logic/derivedKeys.ts';
import { runs, thorough } from './effort.ts';
import type { Rule } from '../../src/domain/rules/rule.ts';

/** `npx tsx scripts/proof/mutate.ts` prints the same by family. */
describe('mutants of the rules', () => {
  test('at least 99 of 100 make a case of their own rule fail', () => {
    const mutated = thorough ? allRules : allRules.filter((_rule, index) => index % 4 === 0);
    const tried = mutated.flatMap((rule) => rule.clauses.flatMap((clause) => mutateClause(rule, clause)));
    const killed = tried.filter((one) => one.fate === 'killed').length;
    const survived = tried.filter((one) => one.fate === 'survived');
    const names = survived.map((one) => `${one.rule.id}${one.clause.key ?? ''}: ${one.says}`);
    expect(tried.length).toBeGreaterThan(runs(2_500, 11_000));
    // A sample of rules strays further from the mean than the whole book.
    const least = thorough ? 0.99 : 0.98;
    expect(killed / (killed + survived.length), names.join('\n')).toBeGreaterThanOrEqual(least);
  }, 60_000);

  test('at least 99 of 100 mutants of the derived facts make one of their cases fail', () => {
    const tried = derivedKeys.flatMap((key) => mutateDerived(key));
    const killed = tried.filter((one) => one.fate === 'killed').length;
    const survived = tried.filter((one) => one.fate === 'survived');
    expect(
      killed / (killed + survived.length),
      survived.map((one) => one.says).join('\n'),
    ).toBeGreaterThanOrEqual(0.99);
  }, 60_000);

  test('a condition has a mutant for each leaf, each part, each bound and each end of a range', () => {
    const condition = all(
      is('roomUse', 'office', 'lobby'),
      not(over('leafWidthIn', 36)),
      ibc({ from: 2021, readTo: 2024 }),
    );
    expect(conditionMutants(condition).map((one) => one.says)).toEqual([
      'all of 3 → any',
      'all of 3 without roomUse = office/lobby',
      'all of 3 without not (leafWidthIn over 36)',
      'all of 3 without ibc 2021–',
      'roomUse = office/lobby negated',
      'roomUse = office/lobby without office',
      'roomUse = office/lobby without lobby',
      'not (leafWidthIn over 36): “not” dropped',
      'leafWidthIn over 36 negated',
      'leafWidthIn over 36 → atLeast',
      'leafWidthIn over 36 bound + 0.0625',
      'leafWidthIn over 36 bound − 0.0625',
      'ibc 2021– negated',
      'ibc 2021– → ibc 2018–',
      'ibc 2021– → ibc 2024–',
    ]);
  });

  test('a clause has a mutant for each part it asks for, and for its effect, grade, trade, gravity and field', () => {
    const says = (effect: Parameters<typeof effectMutants>[0]) =>
      effectMutants(effect).map((one) => one.says);
    expect(says({ effect: 'require', items: ['listedLock', 'exitSensor'] })).toEqual([
      'items without listedLock',
      'items: latchHardwareOnLeaf for listedLock',
      'items without exitSensor',
      'items: pushToExit for exitSensor',
      'require → caution',
    ]);
    expect(says({ effect: 'signOff', grade: 'must' })).toEqual([
      'signOff must → should',
      'signOff must → note',
      'signOff → caution',
    ]);
    expect(says({ effect: 'modify', trade: 'signs' })).toHaveLength(7);
    expect(says({ effect: 'finding', field: 'doorType', severity: 'refuse' })).toHaveLength(3);
    expect(says({ effect: 'prohibit' })).toEqual(['prohibit → caution']);
  });

  test('a rule without its cases lets all of its mutants live, so the figure can fall', () => {
    const rule = allRules[0] as Rule;
    const fates = new Set(mutateClause(rule, rule.clauses[0], []).map((one) => one.fate));
    expect(fates).not.toContain('killed');
    expect(fates).toContain('survived');
  });
});
