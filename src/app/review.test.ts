import { expect, test } from 'vitest';
import { demoProject } from '../../scripts/demo/demoProject.ts';
import { reviewState } from '../domain/review/status.ts';
import { verdictOn, withVerdict } from '../domain/testing/verdicts.ts';
import { decisionsInBuilding } from './buildings.ts';
import { questionsFor } from './review.ts';

const demo = demoProject();
const decisions = decisionsInBuilding(demo);
const questions = questionsFor(demo);

test('every flag of every opening is asked in one question and no other', () => {
  const asked = questions.flatMap(({ at }) =>
    at.flatMap(({ opening, flags }) => flags.map((flag) => `${opening.mark} ${flag}`)),
  );
  const flagged = [...decisions].flatMap(([id, decision]) => {
    const opening = demo.openings[id];
    if (!opening) return [];
    return reviewState(demo, opening, decision).flags.flatMap(({ reason }) =>
      reason.grade === 'note' ? [] : [`${opening.mark} ${reason.flag}`],
    );
  });
  expect(asked.toSorted()).toEqual(flagged.toSorted());
});

test('no opening is asked two questions of one title', () => {
  const titles = questions.flatMap(({ at, grade, title }) =>
    at.map(({ opening }) => `${opening.mark}: ${title} (${grade})`),
  );
  expect(titles.filter((one, index) => titles.indexOf(one) !== index)).toEqual([]);
});

test('one answer to a question answers every flag it is made of', () => {
  const question = questions.find(({ at }) => at.some(({ flags }) => flags.length > 1));
  if (!question) throw new Error('No question of the demo is made of two flags.');
  const reference = 'Letter 7';
  const verdict = verdictOn(demo, question.at, { questions: [...question.flags], reference });
  const after = questionsFor(withVerdict(demo, verdict)).find(({ id }) => id === question.id);
  expect(after?.at.map(({ state }) => state)).toEqual(question.at.map(() => 'approved'));
});
