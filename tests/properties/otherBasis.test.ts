// Two footings of one building, held against the two decisions they come from.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CodeBasis, defaultBasis, ibcEditions, nfpa101Editions } from '../../src/domain/codes/basis.ts';
import { decide } from '../../src/domain/decide/decide.ts';
import type { Decision } from '../../src/domain/decide/decision.ts';
import { signOffReasons } from '../../src/domain/words/signOff.ts';
import { decideInBuilding } from '../../src/domain/building/joined.ts';
import type { Amendment, Opening, Project } from '../../src/domain/model/project.ts';
import {
  compareOpening,
  type ComparedOpening,
  compareProject,
  onOtherBasis,
  type OtherBasis,
  otherBasisInWords,
} from '../../src/domain/schedules/otherBasis.ts';
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

function checkedAll(project: Project, other: OtherBasis): number {
  const [was, is] = [decideInBuilding(project), decideInBuilding(onOtherBasis(project, other))];
  let told = 0;
  for (const opening of Object.values(project.openings)) {
    const [now, then] = [was.get(opening.id), is.get(opening.id)];
    if (now && then) told += checked(opening, now, then);
  }
  return told;
}

const fromBuilding = ({ severe }: Decision) =>
  severe.flatMap(({ from, key }) => (from === 'building' ? [key] : [])).join();

function checked(opening: Opening, was: Decision, is: Decision): number {
  const compared = compareOpening(opening, was, is);
  const [now, then] = [essence(was), essence(is)];
  for (const kind of ['decided', 'required', 'signed'] as const) {
    const differs = JSON.stringify(now[kind]) !== JSON.stringify(then[kind]);
    const told = compared.differences.some((one) => one.kind === kind);
    // Work on door and frame is told with the items, so more may be told than items differ.
    if (kind !== 'required' || differs)
      expect([opening.mark, kind, told]).toEqual([opening.mark, kind, differs]);
  }
  for (const one of compared.differences) {
    expect(one.now).not.toBe(one.instead);
    // A rule makes each difference; only an assumed fact and a choice by hand are signed for without one, and what the
    // building does to a door is no rule's.
    if (one.kind !== 'signed' && fromBuilding(was) === fromBuilding(is))
      expect([one, one.behind.length > 0]).toEqual([one, true]);
  }
  return compared.differences.length;
}

describe('another basis, side by side', () => {
  test('the same footing makes no difference', () => {
    expect(compareProject(demo, demo).flatMap((one) => one.differences)).toEqual([]);
  });

  test('every opening of the demo under every edition: what differs is told, with its rule, nothing else is', () => {
    let told = 0;
    for (const basis of bases) told += checkedAll(demo, { ...demo, basis });
    expect(told).toBeGreaterThan(100);
  }, 120_000);

  test('read the other way round it is the same, sides exchanged', () => {
    const other = { basis: { ...demo.basis, ibc: 2024 as const }, amendments: demo.amendments };
    const there = onOtherBasis(demo, other);
    const sides = (compared: readonly ComparedOpening[], turned: boolean) =>
      compared.map(({ mark, differences }) => [
        mark,
        ...differences
          .map((one) => `${one.kind}: ${turned ? one.instead : one.now} | ${turned ? one.now : one.instead}`)
          .toSorted(),
      ]);
    expect(sides(compareProject(there, demo), true)).toEqual(sides(compareProject(demo, other), false));
  });

  test('openings made up', () => {
    fc.assert(
      fc.property(aSurvey, fc.constantFrom(...bases), (survey, basis) => {
        const { project, opening } = paperOf(survey);
        checked(opening, decide(project, opening), decide({ ...project, basis }, opening));
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
    const compared = compareOpening(opening, decide(amended, opening), decide(demo, opening));
    expect(compared.differences.flatMap((one) => one.behind.map((by) => by.ruleId))).toContain('LOCAL-a1');
    expect(otherBasisInWords(amended, demo)).toMatch(/without 1 local amendment$/);
  });
});
