import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { blank, fromSurvey, interview } from '../../scripts/proof/interview.ts';
import { officeAnswers, officeDoor, officeProject } from '../../scripts/proof/officeDoor.ts';
import { answersTo } from '../../src/domain/decide/answers.ts';
import { decide } from '../../src/domain/decide/decide.ts';
import { valueIn } from '../../src/domain/logic/slots.ts';
import { answered, outcome } from '../../src/domain/decide/whatMatters.ts';
import { type FactKey, factKeys, type FactValues } from '../../src/domain/model/fields.ts';
import { newOpening, newProject } from '../../src/domain/model/newProject.ts';
import { openProjectText } from '../../src/domain/versions/file.ts';
import demo from '../../demo-data/demo-building.json?raw';
import { heardOnlyWhenRecorded } from './onlyWhenRecorded.ts';
import { aSurvey } from './surveys.ts';

/** Survey answers drawn at random, a third of them "not known". */
const someTruth: fc.Arbitrary<FactValues> = fc
  .tuple(
    aSurvey,
    fc.tuple(...factKeys.map((key) => fc.option(fc.constantFrom(...answersTo(key)), { freq: 2 }))),
  )
  .map(([{ facts }, drawn]) => ({
    ...(Object.fromEntries(
      factKeys.flatMap((key, index) => (drawn[index] === null ? [] : [[key, drawn[index]]])),
    ) as FactValues),
    ...facts,
  }));

describe('questions', () => {
  test('end, are never asked twice, and after the last one no answer changes the outcome', () => {
    fc.assert(
      fc.property(someTruth, fc.boolean(), (truth, saysNotKnown) => {
        const end = interview(
          newProject('p', 'P'),
          newOpening('o', '1'),
          (key) => truth[key] ?? otherwise(key),
        );
        function otherwise(key: FactKey) {
          return saysNotKnown ? undefined : answersTo(key)[0];
        }
        expect(new Set(end.asked).size).toBe(end.asked.length);
        const { project, opening, decision } = end;
        const missing = factKeys.filter(
          (key) =>
            !heardOnlyWhenRecorded.has(key) &&
            valueIn(decision.slots, key) === undefined &&
            (opening.facts[key] ?? project.building[key])?.is !== 'unknown',
        );
        for (const key of missing) {
          for (const value of answersTo(key)) {
            const after = decide(...answered(project, opening, key, value));
            // An answer that contradicts the survey is caught when it is given; nobody is asked only to be caught.
            if (after.state === 'refused') continue;
            expect(outcome(after), `${key} = ${value}`).toBe(outcome(decision));
          }
        }
      }),
      // Not shrunk: an interview is long, and the first opening that fails says enough.
      { numRuns: 12, seed: 13, endOnFailure: true },
    );
  }, 120_000);

  test('at the most ordinary office door are few until it is decided', () => {
    const { untilDecided, decision } = interview(officeProject, officeDoor, officeAnswers);
    expect(decision.state).toBe('settled');
    // One for the frame: whether it is grouted, and what its lock is fed through, hang on there being one.
    expect(untilDecided).toBeLessThanOrEqual(20);
  });

  test('in the demo building stay few', () => {
    const opened = openProjectText(demo);
    if (!opened.ok) throw new Error('The demo building cannot be opened.');
    const { project } = opened;
    const counts = Object.values(project.openings)
      .filter((_opening, index) => index % 8 === 0)
      .flatMap((opening) => {
        const { untilDecided } = interview(project, blank(opening), fromSurvey(project, opening));
        return untilDecided === undefined ? [] : [untilDecided];
      })
      .toSorted((a, b) => a - b);
    expect(counts.length).toBeGreaterThan(8);
    expect(counts[Math.floor(counts.length / 2)]).toBeLessThanOrEqual(17);
  });
});
