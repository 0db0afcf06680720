import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { applyEdits } from '../commands/command.ts';
import { decide, decideAll } from '../decide/decide.ts';
import type { Project } from '../model/project.ts';
import { hardwareSets, setNumbersOf } from '../sets/sets.ts';
import { openProjectText } from '../versions/file.ts';
import { chooseFewest, type Option } from './cover.ts';
import {
  allWays,
  changesAsEdits,
  fewerSets,
  followMajority,
  mergeInWords,
  mergesOnRecord,
  type OpeningWays,
} from './fewerSets.ts';

const at = '2026-03-02T09:00:00Z';

describe('the fewest contents that serve every opening', () => {
  const anOpening = fc.uniqueArray(fc.constantFrom('a', 'b', 'c', 'd', 'e'), { minLength: 1, maxLength: 3 });
  /** By trying every choice of contents. */
  function tried(openings: readonly (readonly Option[])[]): number {
    const all = [...new Set(openings.flat().map((one) => one.content))];
    const sizes = Array.from({ length: 2 ** all.length }, (_, bits) =>
      all.filter((_one, index) => bits & (2 ** index)),
    )
      .filter((kept) => openings.every((options) => options.some((one) => kept.includes(one.content))))
      .map((kept) => kept.length);
    return Math.min(...sizes);
  }

  it('serve each, and are never fewer than the bound says nor the bound above what is possible', () => {
    fc.assert(
      fc.property(fc.array(anOpening, { minLength: 1, maxLength: 7 }), (drawn) => {
        const openings = drawn.map((contents) => contents.map((content, lost) => ({ content, lost })));
        const { kept, least } = chooseFewest(openings);
        for (const options of openings) expect(options.some((one) => kept.has(one.content))).toBe(true);
        const best = tried(openings);
        expect(least).toBeLessThanOrEqual(best);
        expect(kept.size).toBeGreaterThanOrEqual(best);
        expect(kept.size).toBeLessThanOrEqual(best + 1);
      }),
      { numRuns: 300 },
    );
  });

  it('take one content for three openings rather than three', () => {
    const option = (content: string): Option => ({ content, lost: 0 });
    const shared = [
      [option('a'), option('x')],
      [option('b'), option('x')],
      [option('c'), option('x')],
    ];
    expect(chooseFewest(shared)).toEqual({ kept: new Set(['x']), least: 1 });
  });
});

describe('fewer sets of the demo building', () => {
  let project: Project;
  let ways: readonly OpeningWays[];
  beforeAll(() => {
    const opened = openProjectText(readFileSync('demo-data/demo-building.json', 'utf8'));
    if (!opened.ok) throw new Error('The demo building does not open.');
    ({ project } = opened);
    ways = allWays(project, decideAll(project), 100);
  }, 60_000);

  it('are about forty as they stand, and fewer the more may be given up', () => {
    const counts = [0, 20, 50, 100].map((lost) => fewerSets(ways, lost));
    expect(counts[0]?.before).toBe(hardwareSets(project, decideAll(project)).length);
    expect(counts[0]?.before).toBeLessThanOrEqual(38);
    const after = counts.map((one) => one.after);
    expect(after).toEqual(after.toSorted((a, b) => b - a));
    expect(after.at(-1)).toBeLessThanOrEqual(38);
    for (const one of counts) expect(one.after).toBeGreaterThanOrEqual(one.least);
    expect(counts[2]?.says).toMatch(/sets become \d+, giving up at most 5\.0 points of 100/);
  });

  it('never take what a rule forbids or doubts, nor more than is allowed, nor the release an owner asked for', () => {
    for (const { openingId, candidateId, lost } of fewerSets(ways, 100).changes) {
      const opening = project.openings[openingId];
      if (!opening) throw new Error(openingId);
      const before = decide(project, opening);
      const out = [...before.rejected, ...before.open].map((one) => one.candidate.id);
      expect(out).not.toContain(candidateId);
      expect(lost).toBeLessThanOrEqual(100);
      const wanted = before.chosen?.candidate.release === 'delayed' ? /delayed$/ : /./;
      expect(candidateId).toMatch(wanted);
    }
  });

  it('come out as said once the changes are made, by one step that can be taken back', () => {
    const found = fewerSets(ways, 50);
    const done = applyEdits(project, changesAsEdits(found.changes, 'Estimator', at));
    if (!done.ok) throw new Error('refused');
    expect(new Set(setNumbersOf(done.project, decideAll(done.project)).values()).size).toBe(found.after);
    // Which sets, by whom, when and what each gave up stays on record until the choice is taken back.
    const [merge, ...others] = mergesOnRecord(done.project);
    expect(others).toEqual([]);
    expect(merge).toMatchObject({ by: 'Estimator', at });
    expect(merge?.changes.map(({ openingId }) => openingId)).toEqual(
      found.changes.map(({ openingId }) => openingId),
    );
    expect(merge?.changes[0]?.says).toMatch(
      /^\S+ from HS-\d+ to HS-\d+: .* gives up [\d.]+ points of 100\.$/,
    );
    expect(merge && mergeInWords(merge)).toMatch(
      /^\d+ openings moved to another set on 2026-03-02 by Estimator\.$/,
    );
    const undone = applyEdits(done.project, done.inverse, true);
    expect(undone.ok && undone.project).toEqual(project);
    expect(undone.ok && mergesOnRecord(undone.project)).toEqual([]);
  });

  it('twins at a near-tie follow the majority: 406 takes what 201 has, and it says so', () => {
    const change = followMajority(ways).find((one) => one.mark === '406');
    expect(change?.candidateId).toBe('strikeCylindrical/secure/free');
    expect(change?.says).toMatch(/gives up 0\.7 points of 100\. \d+ openings of the building have it\./);
    expect(followMajority(ways).map((one) => one.mark)).not.toContain('207A');
  });
});
