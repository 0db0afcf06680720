import { describe, expect, it } from 'vitest';
import { decide } from '../../domain/decide/decide.ts';
import { known } from '../../domain/testing/facts.ts';
import { newOpening, newProject } from '../../domain/model/newProject.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import type { Verdict } from '../../domain/model/verdict.ts';
import { hardwareSets } from '../../domain/sets/sets.ts';
import { verdictOn, withVerdict } from '../../domain/testing/verdicts.ts';
import { setsCsv } from '../csv/setsCsv.ts';
import { sequencePages } from './sequencePages.ts';
import { setSheet } from './setSheet.ts';
import { testPages } from './testPages.ts';
import { draftOf } from './stamp.ts';

const office = (id: string, mark: string): Opening => ({
  ...newOpening(id, mark),
  facts: {
    doorType: known('single'),
    leafMaterial: known('hollowMetal'),
    frameMaterial: known('hollowMetal'),
    latch: known('mortise'),
    readerSides: known('secure'),
    fireRatingMin: known(45),
    wallRatingMin: known(60),
    wallKind: known('fireBarrier'),
    egressRole: known('exitAccess'),
    roomUse: known('office'),
    occupancyGroup: known('B'),
    occupantLoad: known(4),
  },
});
const says = 'The guard tries the lever at every round';
const from = 'J. Reviewer, 2026-03-02';
const house: Project = {
  ...newProject('p', 'House'),
  openings: { a: office('a', '101'), b: office('b', '102') },
};

/** Approved with the condition at 101 only; `changed` is what is found at 101 afterwards. */
function papers(other: Partial<Verdict> = {}, later?: Partial<Verdict>, changed: Opening['facts'] = {}) {
  const opening = house.openings['a'] as Opening;
  const targets = [{ opening, decision: decide(house, opening) }];
  const approval = {
    verdict: 'approvedWithConditions',
    conditions: [says],
    ...other,
  } satisfies Partial<Verdict>;
  let project = withVerdict(house, verdictOn(house, targets, approval));
  if (later) project = withVerdict(project, verdictOn(project, targets, later));
  const now = { ...opening, facts: { ...opening.facts, ...changed } };
  project = { ...project, openings: { ...project.openings, a: now } };
  const openings = Object.values(project.openings);
  const decisions = new Map(openings.map((one) => [one.id, decide(project, one)]));
  return {
    set: setSheet(project, decisions).sets.flatMap((one) =>
      one.blocks.filter(({ head }) => head === 'Conditions of approval').flatMap(({ lines }) => lines),
    ),
    csv: setsCsv(hardwareSets(project, decisions), [])
      .split('\r\n')
      .filter((row) => row.includes(says)),
    sequence: sequencePages(project, decisions).sets.flatMap(({ ways }) =>
      ways.filter(({ lines }) => lines.some((line) => line.says.includes(says))).map(({ marks }) => marks),
    ),
    tests: testPages(project, decisions, openings, draftOf('2026-03-03')).map(({ mark, lines }) => [
      mark,
      lines.filter((line) => line.act.includes(says)).map(({ source }) => source),
    ]),
  };
}

describe('conditions of an approval', () => {
  it('are lines of the set on paper and in the table, of the sequence and of the test, at their opening only', () => {
    const { set, csv, sequence, tests } = papers();
    expect(set).toMatchObject([{ name: says, newSays: '1', says: 'at 101', rules: from }]);
    expect(csv).toHaveLength(1);
    expect(csv[0]).toContain('Conditions of approval');
    expect(csv[0]).toMatch(/,101$/);
    expect(sequence).toEqual([['101']]);
    expect(tests).toEqual([
      ['101', [from]],
      ['102', []],
    ]);
  });

  it('stay when somebody approves without them, and go with a withdrawal', () => {
    expect(papers({}, { verdict: 'approved' }).csv).toHaveLength(1);
    const gone = papers({}, { verdict: 'withdrawn', withdraws: 'v1' });
    expect([gone.set, gone.csv, gone.sequence]).toEqual([[], [], []]);
    expect(gone.tests).toEqual([
      ['101', []],
      ['102', []],
    ]);
  });

  it('are in force only where the verdict is an approval with conditions, and say when it is stale', () => {
    expect(papers({ verdict: 'refused' }).set).toEqual([]);
    const { set, tests } = papers({}, undefined, { fireRatingMin: known(90) });
    expect(set).toMatchObject([{ rules: `${from}, stale` }]);
    expect(tests[0]).toEqual(['101', [`${from}, stale`]]);
  });
});
