import { expect, test } from 'vitest';
import { demoProject } from '../../../scripts/demo/demoProject.ts';
import { amendmentRule } from '../rules/amendments.ts';
import { decide } from '../decide/decide.ts';
import { reportOf } from '../words/report.ts';
import { factKeys, fieldInfo } from '../model/fields.ts';
import { reviewState } from '../review/status.ts';
import { allRules } from '../rules/all.ts';
import { conditionInWords, conditionLine } from '../manual/conditionInWords.ts';
import { manualEntry } from '../manual/ruleManual.ts';
import { caseBasis } from '../rules/rule.ts';
import { slotsFrom } from '../rules/runCase.ts';
import { fillSentence, valueInSentence, valueInWords } from './format.ts';
import { midSentence } from './midSentence.ts';

const labels = [...new Set(factKeys.flatMap((key) => Object.values(fieldInfo(key).options ?? {})))];

test('within a sentence an answer begins small, unless it is an abbreviation, a group or a figure', () => {
  const stay = labels.filter((label) => midSentence(label) === label);
  const groups = Object.values(fieldInfo('occupancyGroup').options ?? {});
  expect(stay.toSorted()).toEqual(
    [
      ...groups,
      'LH',
      'RH',
      'LHR',
      'RHR',
      '12 V DC',
      '24 V DC',
      '4-7/8 × 1-1/4 in',
      '2-3/4 × 1-1/8 in',
      ...Object.values(fieldInfo('sprinklerKind').options ?? {}),
    ].toSorted(),
  );
  expect(midSentence('Power over Ethernet')).toBe('power over Ethernet');
  expect(midSentence('NFPA 101-2018 amended by TIA 1436')).toBe('NFPA 101-2018 amended by TIA 1436');
  expect(midSentence('A card or code')).toBe('a card or code');
});

test('alone an answer keeps its capital, in a sentence it does not', () => {
  expect(valueInWords('latch', 'mortise')).toBe('Mortise latch');
  expect(valueInSentence('latch', 'mortise')).toBe('mortise latch');
  expect(valueInSentence('occupancyGroup', 'I-1.2')).toBe('I-1, Condition 2');
  expect(valueInSentence('occupantLoad', 60)).toBe('60 people');
  expect(valueInSentence('occupantLoad', 1)).toBe('1 person');
  expect(valueInWords('delayedDoorsOnPath', 1)).toBe('1 door');
  expect(valueInWords('stairStories', 1)).toBe('1 story');
  expect(valueInSentence('latch', undefined)).toBe('not surveyed');
});

test('a sentence that begins with an answer begins with a capital', () => {
  const slots = slotsFrom({ latch: 'mortise', doorType: 'pair' }, caseBasis(undefined));
  expect(fillSentence('{latch} on a {doorType}.', slots)).toBe('Mortise latch on a pair of leaves.');
  expect(fillSentence('It latches. {latch} does it.', slots)).toBe('It latches. Mortise latch does it.');
});

/** Answers of several words, as they stand alone; none of them may stand so after a small letter or a comma. */
const misplaced = new RegExp(
  `(?:[a-z,;] |[(])(${labels
    .filter((label) => midSentence(label) !== label && label.includes(' '))
    .map((label) => label.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&'))
    .join('|')})(?![a-z])`,
);

test('no condition of the book, no sentence of a decision and no change since a review writes one large', () => {
  const project = demoProject();
  const sentences = [
    ...allRules.flatMap((rule) =>
      rule.clauses.map(({ when }) => conditionLine(conditionInWords(when, null))),
    ),
    ...allRules.flatMap((rule) => manualEntry(rule, null).clauses.map(({ says }) => says)),
    ...amendmentRule({
      id: 'a',
      says: 'Local text.',
      source: 'Ordinance 1',
      effect: 'signOff',
      when: { latch: 'mortise', wallKind: 'corridor' },
      devices: [],
      releases: [],
      failModes: [],
    }).clauses.map(({ when }) => conditionLine(conditionInWords(when, project.basis))),
    ...Object.values(project.openings).flatMap((opening) => {
      const decision = decide(project, opening);
      const report = reportOf(decision);
      const changed = decide(project, {
        ...opening,
        facts: { ...opening.facts, latch: { is: 'known', value: 'deadboltOnly' } },
      });
      return [
        ...[...report.findings, ...report.cautions, ...report.signOffs].map(({ sentence }) => sentence),
        ...report.work.flatMap(({ lines }) => lines.map(({ sentence }) => sentence)),
        ...report.rejected.flatMap(({ variants }) =>
          variants.flatMap(({ because }) => because.map(({ sentence }) => sentence)),
        ),
        ...reviewState(project, opening, changed).says,
      ];
    }),
  ];
  expect(sentences.length).toBeGreaterThan(1000);
  expect([...new Set(sentences.filter((one) => misplaced.test(one)))]).toEqual([]);
});
