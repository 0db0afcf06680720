import { expect, test } from 'vitest';
import { demoProject } from '../../../scripts/demo/demoProject.ts';
import { blank, fromSurvey, interview } from '../../../scripts/proof/interview.ts';
import { officeAnswers, officeDoor, officeProject } from '../../../scripts/proof/officeDoor.ts';
import { answersTo } from '../decide/answers.ts';
import { decide } from '../decide/decide.ts';
import { answered, couldStillChange, outcome } from '../decide/whatMatters.ts';
import type { Facts } from '../model/fact.ts';
import type { FactKey, FactValues } from '../model/fields.ts';
import type { Opening } from '../model/project.ts';
import { surveyEnd } from './surveyEnd.ts';

const rest: FactValues = { latchProjectionIn: 0.5, existingArrangement: 'freeLever' };
const everything = (key: FactKey) => officeAnswers(key) ?? rest[key];
const endOf = (answers: Parameters<typeof interview>[2]) => {
  const { project, opening, decision } = interview(officeProject, officeDoor, answers);
  return { project, opening, decision, end: surveyEnd(project, opening, decision) };
};

test('with every answer known it says that nothing could change the decision', () => {
  const { end, decision } = endOf(everything);
  expect(decision.state).toBe('settled');
  expect(end).toMatchObject({
    says: 'Nothing more needs to be asked: every answer that could change this decision or its order is known.',
    couldChange: [],
  });
});

test('what an order still waits for is named, and only what it is ordered by', () => {
  const { project, opening } = endOf(everything);
  const needed = (facts: Facts) => {
    const one: Opening = { ...opening, facts: { ...opening.facts, ...facts } };
    return surveyEnd(project, one, decide(project, one)).alsoNeeded.map(({ key }) => key);
  };
  const notKnown = { is: 'unknown' } as const;
  expect(needed({})).toEqual([]);
  // The strike's voltage; the run is estimated from the plan, and the closer that hangs there needs no width.
  expect(needed({ supplyVolts: notKnown, distanceToSupplyFt: notKnown })).toContain('supplyVolts');
  expect(needed({ leafWidthIn: notKnown })).toEqual([]);
  // A new opening is bought with hinges, and how many follows from the height of the leaf.
  const isNew = { workStatus: { is: 'known', value: 'new' }, leafHeightIn: notKnown } as const;
  expect(needed(isNew)).toContain('hinges');
  expect(needed({ ...isNew, hinges: { is: 'known', value: 'butt' } })).toContain('leafHeightIn');
  expect(needed({ hinges: { is: 'known', value: 'butt' }, leafHeightIn: notKnown })).toEqual([]);
});

test('what nobody could tell and still counts is named, and an answer to it does change the decision', () => {
  const { project, opening, decision, end } = endOf((key) => (key === 'latch' ? undefined : everything(key)));
  expect(end.says).toMatch(
    /^Nothing more needs to be asked, but .*not known.* could still change this decision:$/,
  );
  expect(end.couldChange.map(({ label }) => label)).toContain('Latch or exit device');
  const after = answersTo('latch').map((value) => decide(...answered(project, opening, 'latch', value)));
  expect(after.some((one) => outcome(one) !== outcome(decision))).toBe(true);
});

test('an answer of "not known" that could not matter is not named', () => {
  const { project, opening } = endOf(everything);
  const asked = { ...opening, facts: { ...opening.facts, poolBarrierGate: { is: 'unknown' as const } } };
  expect(couldStillChange(project, asked)).toEqual([]);
});

test('over the demo it never says that all is known while an answer of "not known" still counts', () => {
  const demo = demoProject();
  const ends = Object.values(demo.openings)
    .filter((_one, index) => index % 12 === 0)
    .map((opening) => {
      const told = fromSurvey(demo, opening);
      let count = 0;
      // Every third question is answered "not known".
      const end = interview(demo, blank(opening), (key) => (++count % 3 === 0 ? undefined : told(key)));
      const { project, decision, asked } = end;
      const { says, couldChange } = surveyEnd(project, end.opening, decision);
      const notNamed = asked.filter(
        (key) =>
          (end.opening.facts[key] ?? project.building[key])?.is === 'unknown' &&
          !couldChange.some((one) => one.key === key),
      );
      const missed = notNamed.flatMap((key) =>
        answersTo(key)
          .map((value) => decide(...answered(project, end.opening, key, value)))
          .filter((after) => after.state !== 'refused' && outcome(after) !== outcome(decision))
          .map(() => key),
      );
      return { named: couldChange.length, missed, saysAll: says.includes('every answer') };
    });
  expect(ends.flatMap(({ missed }) => missed)).toEqual([]);
  expect(ends.filter(({ named, saysAll }) => named > 0 && saysAll)).toEqual([]);
  expect(ends.filter(({ named }) => named > 0).length).toBeGreaterThan(2);
}, 120_000);
