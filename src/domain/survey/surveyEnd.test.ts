import { expect, test } from 'vitest';
import { demoProject } from '../../../scripts/demo/demoProject.ts';
import { blank, fromSurvey, interview } from '../../../scripts/proof/interview.ts';
import { officeAnswers, officeDoor, officeProject } from '../../../scripts/proof/officeDoor.ts';
import { answersTo } from '../decide/answers.ts';
import { decide } from '../decide/decide.ts';
import { answered, couldStillChange, outcome } from '../decide/whatMatters.ts';
import type { FactKey, FactValues } from '../model/fields.ts';
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
  expect(end).toEqual({
    says: 'Nothing more needs to be asked: every answer that could change this decision is known.',
    couldChange: [],
  });
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
  let named = 0;
  for (const opening of Object.values(demo.openings).filter((_one, index) => index % 12 === 0)) {
    const told = fromSurvey(demo, opening);
    let asked = 0;
    // Every third question is answered "not known".
    const end = interview(demo, blank(opening), (key) => (++asked % 3 === 0 ? undefined : told(key)));
    const { says, couldChange } = surveyEnd(end.project, end.opening, end.decision);
    const keys = new Set<FactKey>(couldChange.map(({ key }) => key));
    for (const key of end.asked) {
      if ((end.opening.facts[key] ?? end.project.building[key])?.is !== 'unknown' || keys.has(key)) continue;
      for (const value of answersTo(key)) {
        const after = decide(...answered(end.project, end.opening, key, value));
        if (after.state !== 'refused')
          expect(outcome(after), `${key} = ${value}`).toBe(outcome(end.decision));
      }
    }
    if (keys.size > 0) {
      named += 1;
      expect(says).not.toMatch(/every answer/);
    }
  }
  expect(named).toBeGreaterThan(2);
});
