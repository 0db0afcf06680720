import { expect, test } from 'vitest';
import { failModeWords, stateWords } from '../decide/words.ts';
import { releases } from '../devices/candidates.ts';
import { deviceIds, devices } from '../devices/devices.ts';
import { factKeys, fieldInfo } from '../model/fields.ts';
import { glossary, gradeTermsExplained, surveyTerms } from './glossary.ts';

const terms = glossary.flatMap((group) => group.terms);
const explained = new Set(terms.map((term) => term.term));

test('every device, way out, fail mode, state and grade is explained', () => {
  const used = [
    ...deviceIds.map((id) => devices[id].name),
    ...Object.values(releases),
    ...Object.values(failModeWords),
    ...Object.values(stateWords).map(({ word }) => word),
    ...gradeTermsExplained,
  ];
  expect(used.filter((word) => !explained.has(word))).toEqual([]);
});

test('every question of the survey stands in it with its answers', () => {
  expect(surveyTerms.map((term) => term.key).toSorted()).toEqual(factKeys.toSorted());
  const choices = factKeys.filter((key) => fieldInfo(key).kind === 'choice');
  const short = surveyTerms.filter(
    (term) =>
      choices.includes(term.key) &&
      term.answers.length !== Object.keys(fieldInfo(term.key).options ?? {}).length,
  );
  expect(short).toEqual([]);
});

test('each is one plain sentence, and no term stands twice in a group', () => {
  const bad = terms.filter(({ says }) => !/^[A-Z].*\.$/.test(says) || says.length > 140);
  expect(bad).toEqual([]);
  for (const group of glossary) {
    expect(new Set(group.terms.map((term) => term.term)).size).toBe(group.terms.length);
  }
});
