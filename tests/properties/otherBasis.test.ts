// Two footings of one building, held against the two decisions they come from.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CodeBasis, defaultBasis, ibcEditions, nfpa101Editions } from '../../src/domain/codes/basis.ts';
import { decide } from '../../src/domain/decide/decide.ts';
import type { Decision } from '../../src/domain/decide/decision.ts';
import { signOffReasons } from '../../src/domain/decide/signOff.ts';
import type { Amendment } from '../../src/domain/model/project.ts';
import { compareOpening, onOtherBasis, otherBasisInWords } from '../../src/domain/schedules/otherBasis.ts';
import { runs } from './effort.ts';
import { demo, demoOpenings, paperOf } from './paperOpenings.ts';
import { aSurvey } from './surveys.ts';

const bases: readonly CodeBasis[] = [
  ...ibcEditions.map((ibc) => ({ ...defaultBasis, ibc })),
  ...nfpa101Editions.map((nfpa101) => ({ ...defaultBasis, nfpa101 })),
  ...nfpa101Editions.map((nfpa101) => ({ ...defaultBasis, ibc: null, nfpa101 })),
];

/** What a reader may not miss, taken from the decisions themselves. */
const essence = (decision: Decision) => ({
  decided: [decision.state, decision.chosen?.candidate.id],
  required: [
    ...new Set(decision.requires.flatMap(({ clause }) => (clause.effect === 'require' ? clause.items : []))),
  ].toSorted(),
  signed: signOffReasons(decision)
    .filter((one) => one.grade !== 'note')
    .map((one) => `${one.grade} ${one.sentence}`)
    .toSorted(),
});

function checked(...[project, opening, other]: Parameters<typeof compareOpening>): number {
  const compared = compareOpening(project, opening, other);
  const now = essence(decide(project, opening));
  const then = essence(decide(onOtherBasis(project, other), opening));
  for (const kind of ['decided', 'required', 'signed'] as const) {
    const differs = JSON.stringify(now[kind]) !== JSON.stringify(then[kind]);
    const told = compared.differences.some((one) => one.kind === kind);
    // Work on door and frame is told with the items, so more may be told than items differ.
    if (kind !== 'required' || differs)
      expect([opening.mark, kind, told]).toEqual([opening.mark, kind, differs]);
  }
  for (const one of compared.differences) {
    expect(one.now).not.toBe(one.instead);
    // A rule makes each difference; only an assumed fact and a choice by hand are signed for without one.
    if (one.kind !== 'signed') expect([one, one.behind.length > 0]).toEqual([one, true]);
  }
  return compared.differences.length;
}

describe('another basis, side by side', () => {
  test('the same footing makes no difference', () => {
    for (const opening of demoOpenings) expect(compareOpening(demo, opening, demo).differences).toEqual([]);
  });

  test('every opening of the demo under every edition: what differs is told, with its rule, nothing else is', () => {
    let told = 0;
    for (const basis of bases)
      for (const opening of demoOpenings) told += checked(demo, opening, { ...demo, basis });
    expect(told).toBeGreaterThan(100);
  }, 120_000);

  test('read the other way round it is the same, sides exchanged', () => {
    const other = { basis: { ...demo.basis, ibc: 2024 as const }, amendments: demo.amendments };
    const there = onOtherBasis(demo, other);
    const sides = (list: ReturnType<typeof compareOpening>['differences'], turned: boolean) =>
      list
        .map((one) => `${one.kind}: ${turned ? one.instead : one.now} | ${turned ? one.now : one.instead}`)
        .toSorted();
    for (const opening of demoOpenings) {
      expect(sides(compareOpening(there, opening, demo).differences, true)).toEqual(
        sides(compareOpening(demo, opening, other).differences, false),
      );
    }
  });

  test('openings made up', () => {
    fc.assert(
      fc.property(aSurvey, fc.constantFrom(...bases), (survey, basis) => {
        const { project, opening } = paperOf(survey);
        checked(project, opening, { ...project, basis });
      }),
      { numRuns: runs(400, 1500), seed: 20261130 },
    );
  }, 120_000);

  test('an amendment is another footing: what it asks is told with its own id', () => {
    const amendment: Amendment = {
      id: 'a1',
      says: 'Every door has the fire marshal’s letter.',
      source: 'Ordinance 12',
      effect: 'require',
      when: {},
      devices: [],
      releases: [],
      failModes: [],
    };
    const [opening] = demoOpenings;
    if (!opening) throw new Error('No opening.');
    const amended = { ...demo, amendments: [...demo.amendments, amendment] };
    const compared = compareOpening(amended, opening, demo);
    expect(compared.differences.flatMap((one) => one.behind.map((by) => by.ruleId))).toContain('LOCAL-a1');
    expect(otherBasisInWords(amended, demo)).toMatch(/without 1 local amendment$/);
  });
});
