import { describe, expect, test } from 'vitest';
import { demoProject } from '../../../scripts/demo/demoProject.ts';
import { freeReleases } from '../devices/candidates.ts';
import type { FactKey, FactValues } from '../model/fields.ts';
import type { Opening } from '../model/project.ts';
import { decide } from './decide.ts';
import { searchFor, waysForward } from './whatWouldChange.ts';
import { admissionInWords, wayInWords } from '../words/whatWouldChange.ts';
import { answered } from './whatMatters.ts';

const demo = demoProject();

/** The opening of the demo with this mark, some of it as told instead. */
function openingOf(mark: string, otherwise: FactValues = {}): Opening {
  const found = Object.values(demo.openings).find((one) => one.mark === mark);
  if (!found) throw new Error(`The demo has no opening ${mark}.`);
  return Object.entries(otherwise).reduce(
    (opening, [key, value]) => answered(demo, opening, key as FactKey, value)[1],
    found,
  );
}
function waysOf(opening: Opening, most?: number) {
  const decision = decide(demo, opening);
  expect(decision.state).toBe('none');
  return waysForward(demo, opening, decision, most);
}
const facts = (ways: ReturnType<typeof waysOf>) =>
  ways.map((way) => way.changes.map((one) => `${one.fact}=${one.value}`).join(' '));

/** A hall for 240 whose pair has a lever lock instead of the bars it needs. */
const leverHall: FactValues = {
  latch: 'mortise',
  panicPresent: false,
  inactiveBolts: 'automaticFlush',
  inactiveHasHardware: false,
};

describe('ways forward where no hardware works', () => {
  test('the electrical room pair without an exit device: fit one', () => {
    const ways = waysOf(openingOf('119'));
    expect(facts(ways)).toEqual(['panicPresent=true', 'latch=rimExit']);
    expect(ways.map(wayInWords)[0]).toMatchObject({
      name: expect.stringContaining('Free mechanical egress'),
      work: [{ trade: 'Locksmith', lines: [expect.stringContaining('Exit device')] }],
    });
  });

  test('a hall with a lever lock: an exit device, whichever way', () => {
    const ways = waysOf(openingOf('104', leverHall));
    expect(ways.length).toBeGreaterThan(0);
    for (const way of facts(ways)) expect(way).toMatch(/panicPresent=true|latch=(rimExit|verticalRods)/);
  });

  test('an elevator lobby without a stair, before IBC 2024: no reader, or another way to an exit', () => {
    const lobby = { egressRole: 'elevatorLobby', lobbyHasOtherExit: false } as const;
    expect(facts(waysOf(openingOf('110', lobby)))).toEqual(['readerSides=none', 'lobbyHasOtherExit=true']);
  });

  test('an operator on a stair door that is locked from the stair: without the operator, or left open', () => {
    const stair = {
      egressRole: 'stairEntry',
      stairLockWanted: 'stairSide',
      stairStories: 5,
      stairReleasePoint: 'mainEntrance',
      operator: 'lowEnergy',
    } as const;
    const opening = openingOf('110', stair);
    expect(facts(waysOf(opening))).toContain('operator=none');
    const says = decide(demo, opening).cautions.map((step) => `${step.rule.id}${step.clause.key ?? ''}`);
    expect(says).toContain('T-45d');
  });

  test('nothing within three changes: says so by finding none', () => {
    expect(waysOf(openingOf('119', { doorType: 'slidingManual' }))).toEqual([]);
  });

  test.each([
    ['119', {}],
    ['209', {}],
    ['400', {}],
    ['104', leverHall],
  ] as const)('each way of %s is work after which the arrangement stands', (mark, otherwise) => {
    const opening = openingOf(mark, otherwise);
    const ways = waysOf(opening, 9);
    expect(ways.length).toBeGreaterThan(0);
    for (const { candidate, changes, effort, tenths } of ways) {
      const override = { candidate: candidate.id, reason: 'test', by: '', at: '' };
      let done: [typeof demo, Opening] = [demo, { ...opening, override }];
      for (const one of changes) {
        done = answered(...done, one.fact, one.value);
        for (const [fact, value] of Object.entries(one.also)) {
          done = answered(...done, fact as FactKey, value);
        }
      }
      const after = decide(...done);
      expect([after.state, after.chosen?.score.tenths]).toEqual(['settled', tenths]);
      expect(effort).toBe(changes.reduce((sum, one) => sum + one.effort, 0));
    }
  });

  test('free egress first, then fewest changes, least work, most points; nothing named twice', () => {
    // Without its place on the plan, which shows that the lobby has no other exit.
    const slider = openingOf('209', { doorType: 'slidingAutomatic', operator: 'fullPower', hinges: 'track' });
    const ways = waysOf({ ...slider, fromSpaceId: null, toSpaceId: null }, 9);
    const order = ways.map((way) => [
      freeReleases.includes(way.candidate.release) ? 0 : 1,
      way.changes.length,
      way.effort,
      -way.tenths,
    ]);
    const compare = (a: readonly number[], b: readonly number[]) =>
      a.map((one, index) => one - (b[index] ?? 0)).find((one) => one !== 0) ?? 0;
    expect(order).toEqual(order.toSorted(compare));
    expect(new Set(order.map(([held]) => held))).toEqual(new Set([0, 1]));
    ways.forEach((way, index) => {
      const within = ways
        .slice(0, index)
        .filter((one) => one.changes.every((change) => way.changes.includes(change)));
      expect(within).toEqual([]);
    });
    expect(waysOf(slider, 1)).toEqual(ways.slice(0, 1));
  });
});

describe('what would admit one arrangement', () => {
  test('an exit device brings its bar along', () => {
    const opening = openingOf('119');
    const search = searchFor(demo, opening, decide(demo, opening), 'exitTrim/secure/free');
    expect(search).toMatchObject({ found: true, changes: [{ fact: 'latch', value: 'rimExit' }] });
  });
  test('what no work can change is said at once', () => {
    const opening = openingOf('119', { doorType: 'slidingManual' });
    const search = searchFor(demo, opening, decide(demo, opening), 'mortiseLock/secure/free');
    expect(search.found).toBe(false);
    expect(admissionInWords(search)).toEqual([expect.stringContaining('rules it out')]);
  });
});
