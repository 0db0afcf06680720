import { expect, test } from 'vitest';
import { editSchema } from '../commands/edits.ts';
import { failModeWords } from '../words/arrangement.ts';
import { gradeWords } from '../words/signOff.ts';
import { stateWords } from '../words/states.ts';
import { releases } from '../devices/candidates.ts';
import { deviceIds, devices } from '../devices/devices.ts';
import { factKeys, fieldInfo } from '../model/fields.ts';
import { verdictKinds } from '../model/verdict.ts';
import { reviewStateWords, verdictWords } from '../review/words.ts';
import { severityWords } from '../simulate/outcome.ts';
import { answerWords } from './answers.ts';
import { findWords } from './findWords.ts';
import { glossary, surveyTerms } from './glossary.ts';
import { editTerms } from './glossary/product.ts';
import { pageWords } from './pages.ts';

const terms = glossary.flatMap((group) => group.terms);
const explained = new Set(terms.map((term) => term.term));

test('every device, way out, fail mode, state and grade is explained', () => {
  const used = [
    ...deviceIds.map((id) => devices[id].name),
    ...Object.values(releases),
    ...Object.values(failModeWords),
    ...Object.values(stateWords).map(({ word }) => word),
    gradeWords.must,
    gradeWords.should,
  ];
  expect(used.filter((word) => !explained.has(word))).toEqual([]);
});

test('every page, verdict, review state, severity and kind of edit is explained', () => {
  const used = [
    ...Object.values(pageWords).map(({ name }) => name),
    ...verdictKinds.map((verdict) => verdictWords[verdict]),
    ...Object.values(reviewStateWords),
    ...Object.values(severityWords),
  ];
  expect(used.filter((word) => !explained.has(word))).toEqual([]);
  const kinds = editSchema.options.map((option) => option.shape.kind.value);
  expect(kinds.filter((kind) => !explained.has(editTerms[kind]?.term))).toEqual([]);
});

test('every question of the survey stands in it with its answers', () => {
  expect(surveyTerms.map((term) => term.key).toSorted()).toEqual(factKeys.toSorted());
  const choices = factKeys.filter((key) => fieldInfo(key).kind === 'choice');
  const short = surveyTerms.filter(
    (term) =>
      choices.includes(term.key) &&
      term.answers.length + term.explained.length !== Object.keys(fieldInfo(term.key).options ?? {}).length,
  );
  expect(short).toEqual([]);
});

test('every choice question has words for its answers, each one plain sentence that adds to its label', () => {
  const choices = factKeys.filter((key) => fieldInfo(key).kind === 'choice');
  expect(Object.keys(answerWords).toSorted()).toEqual(choices.toSorted());
  const explanations = surveyTerms.flatMap(({ key, explained: said }) =>
    said.map((one) => ({ key, ...one })),
  );
  const bad = explanations.filter(
    ({ term, says }) =>
      !/^[A-Z].*\.$/.test(says) ||
      /[.!?] /.test(says) ||
      says.length > 140 ||
      says.toLowerCase() === `${term.toLowerCase()}.`,
  );
  expect(bad).toEqual([]);
  for (const { explained: said } of surveyTerms) {
    expect(new Set(said.map(({ says }) => says)).size).toBe(said.length);
  }
});

test('a search finds words, questions and what their answers mean', () => {
  expect(findWords('mortise').questions.map(({ key }) => key)).toContain('latch');
  expect(findWords('ward or care unit').questions.map(({ key }) => key)).toEqual(['roomUse']);
  expect(findWords('shear').groups.map(({ id }) => id)).toEqual(['device']);
  expect(findWords('zzz')).toMatchObject({ groups: [], questions: [], nothing: true });
  expect(findWords(' ').questions).toHaveLength(surveyTerms.length);
});

test('each is one plain sentence, and no term stands twice in a group', () => {
  const bad = terms.filter(({ says }) => !/^[A-Z].*\.$/.test(says) || says.length > 140);
  expect(bad).toEqual([]);
  for (const group of glossary) {
    expect(new Set(group.terms.map((term) => term.term)).size).toBe(group.terms.length);
  }
});
