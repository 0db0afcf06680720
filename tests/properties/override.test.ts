// What a rule forbids stays forbidden when a person chooses it, whoever signs for it.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isForbiddenByHand } from '../../src/domain/decide/byHand.ts';
import { forbiddingRules, handChoices } from '../../src/domain/words/byHand.ts';
import { signOffReasons } from '../../src/domain/words/signOff.ts';
import { stateInWords } from '../../src/domain/words/states.ts';
import { orderState } from '../../src/domain/sets/forOrder.ts';
import { scheduleRows } from '../../src/domain/schedules/openings.ts';
import { verdictOn, withVerdict } from '../../src/domain/testing/verdicts.ts';
import { openSignatures, questionsOf } from '../../src/domain/review/questions.ts';
import { unsignedOpenings } from '../../src/domain/review/status.ts';
import { testPages } from '../../src/exporting/sheets/testPages.ts';
import { reasonsInFull } from '../../src/exporting/sheets/reasons.ts';
import { runs } from './effort.ts';
import { demo, demoOpenings, onPaper, type OnPaper, paperOf, withCandidate } from './paperOpenings.ts';
import { aSurvey } from './surveys.ts';
import { draftOf } from '../../src/exporting/sheets/stamp.ts';

/** Everything that must hold of a forbidden arrangement; `paper` is dear, so not every one is printed. */
function holds({ project, opening, decision, name }: OnPaper, paper: boolean): void {
  const decisions = new Map([[opening.id, decision]]);
  expect(isForbiddenByHand(decision), name).toBe(true);
  expect(decision.state, name).not.toBe('settled');
  expect(orderState(project, opening, decision), name).not.toBe('complete');
  if (decision.state === 'open') expect(stateInWords(decision).word).toMatch(/^Refused by rule/);
  const flag = signOffReasons(decision).find((one) => one.flag === 'refusedByRule');
  expect(flag?.grade, name).toBe('must');
  expect(flag?.sentence, name).toContain(forbiddingRules(decision));
  expect(unsignedOpenings(project, decisions), name).toHaveLength(1);
  expect(openSignatures(questionsOf(project, decisions, []), [opening]).preliminary, name).toBe(true);
  if (!paper) return;
  const [page] = testPages(project, decisions, [opening], draftOf('2026-03-02'));
  if (page) {
    expect(page.lines, name).toEqual([]);
    expect(page.noTest, name).toMatch(/No test is written/);
  }
  const printed = reasonsInFull(decision).find((one) => one.flag === 'refusedByRule');
  expect(printed?.source, name).toContain(printed?.ruleId ?? '?');
  const approved = withVerdict(
    project,
    verdictOn(project, [{ opening, decision }], { reference: 'Letter FM-12 of 2026-03-01' }),
  );
  expect(orderState(approved, opening, decision), name).not.toBe('complete');
  expect(scheduleRows(approved, decisions)[0]?.order, name).not.toBe('May be ordered');
}

const forbidden = ({ decision }: OnPaper) => handChoices(decision).filter((one) => one.forbiddenBy !== '');

describe('an arrangement that a rule forbids and a person chose', () => {
  it('never counts as settled, at any opening of the demo', () => {
    let tried = 0;
    for (const [place, opening] of demoOpenings.entries()) {
      for (const [index, { id }] of forbidden(onPaper(demo, opening)).entries()) {
        if ((index + place) % runs(24, 1) !== 0) continue;
        const paper = onPaper(demo, withCandidate(opening, id));
        holds(paper, tried % 12 === 0);
        tried += 1;
      }
    }
    expect(tried).toBeGreaterThan(60);
  });

  it('never counts as settled, whatever was surveyed', () => {
    let tried = 0;
    fc.assert(
      fc.property(aSurvey, fc.nat(), (survey, pick) => {
        const choices = forbidden(paperOf(survey));
        const choice = choices[pick % Math.max(1, choices.length)];
        if (!choice) return;
        tried += 1;
        holds(paperOf(survey, choice.id), false);
      }),
      { numRuns: runs(20, 2000) },
    );
    expect(tried).toBeGreaterThan(10);
  });
});
