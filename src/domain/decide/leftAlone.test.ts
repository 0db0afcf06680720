import { expect, test } from 'vitest';
import { known } from '../testing/facts.ts';
import type { FactValues } from '../model/fields.ts';
import { newOpening, newProject } from '../model/newProject.ts';
import { decide } from './decide.ts';
import { partsOf } from '../hardware/parts.ts';
import { openQuestions } from './whatMatters.ts';

const at = (facts: FactValues) =>
  decide(newProject('p', 'P'), {
    ...newOpening('o', '101'),
    facts: Object.fromEntries(Object.entries(facts).map(([key, value]) => [key, known(value)])),
  });
const asked = (facts: FactValues) => {
  const { deciding, signing } = openQuestions(at(facts));
  return [...deciding.keys(), ...signing.keys()];
};

test('where nothing is wanted nothing is chosen and nothing bought, whatever else is not known', () => {
  for (const control of ['notControlled', 'asToday'] as const) {
    const decision = at({ control });
    expect(decision.state).toBe('left');
    expect(decision.chosen).toBeNull();
    expect(partsOf(decision)).toEqual([]);
  }
  expect(at({ control: 'controlled' }).state).toBe('open');
});

test('only what may keep people in is asked there', () => {
  expect(asked({ control: 'notControlled' })).toContain('existingArrangement');
  expect(asked({ control: 'notControlled', existingArrangement: 'freeLever' })).toEqual([]);
  expect(asked({ control: 'notControlled', existingArrangement: 'padlock' })).toContain('egressRole');
});

test('a lock that keeps people in is reported and signed for, though nothing is bought', () => {
  const decision = at({
    control: 'asToday',
    existingArrangement: 'padlock',
    egressRole: 'exitAccess',
    roomUse: 'office',
    occupancyGroup: 'B',
  });
  expect(decision.findings.map(({ rule }) => rule.id)).toContain('R-165');
  expect(decision.signOffs.map(({ rule }) => rule.id)).toContain('R-165');
  expect(decision.state).toBe('left');
});

test('a survey that contradicts itself where lives depend on it is refused also there', () => {
  expect(at({ control: 'notControlled', fireRatingMin: 19 }).state).toBe('refused');
});
