import { expect, test } from 'vitest';
import { demoProject } from '../../../scripts/demo/demoProject.ts';
import { openingsInOrder } from '../model/project.ts';
import { decide } from './decide.ts';
import { reportOf } from '../words/report.ts';

/**
 * The next best is printed beside what was chosen, and somebody may take it for the simpler way. So it says what would
 * come with it, in the words that would stand on the sheet if it were chosen.
 */
const demo = demoProject();
const pairs = openingsInOrder(demo).flatMap((opening) => {
  const decision = decide(demo, opening);
  const next = decision.runnerUp?.candidate;
  const shown = reportOf(decision).runnerUp;
  return next && shown ? [{ opening, decision, next, shown }] : [];
});

test('the runner-up is the best of what nothing rules out, with another device', () => {
  expect(pairs.length).toBeGreaterThan(60);
  for (const { opening, decision, next } of pairs) {
    const excluded = [...decision.rejected, ...decision.passedOver].map((one) => one.candidate);
    expect([opening.mark, excluded.includes(next)]).toEqual([opening.mark, false]);
    expect(next.deviceId).not.toBe(decision.chosen?.candidate.deviceId);
  }
});

test('it carries the sign-offs and cautions that would come with it, and its doubt', () => {
  let signed = 0;
  let inDoubt = 0;
  for (const { opening, decision, next, shown } of pairs) {
    const override = { candidate: next.id, reason: 'tried', by: 'test', at: '2026-01-01' };
    const report = reportOf(decide(demo, { ...opening, override }));
    const weighty = report.signOffs.filter((one) => one.grade !== 'note' && one.ruleId !== undefined);
    for (const says of shown.signOffs)
      expect([opening.mark, weighty.map((one) => `${one.sentence} ${one.ruleId}`)]).toEqual([
        opening.mark,
        expect.arrayContaining([says]),
      ]);
    expect(shown.cautions).toEqual(report.cautions.map(({ sentence, ruleId }) => `${sentence} ${ruleId}`));
    const doubted = decision.open.some((one) => one.candidate === next);
    expect([opening.mark, shown.doubt !== '']).toEqual([opening.mark, doubted]);
    signed += shown.signOffs.length;
    if (doubted) inDoubt++;
  }
  expect(signed).toBeGreaterThan(10);
  expect(inDoubt).toBeGreaterThan(0);
});
