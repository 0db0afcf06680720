import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decideAll } from '../domain/decide/decide.ts';
import { shownState } from '../domain/words/states.ts';
import { judgeBuilding } from '../domain/building/joined.ts';
import { known } from '../domain/testing/facts.ts';
import type { FactValues } from '../domain/model/fields.ts';
import type { Opening, Project, Space } from '../domain/model/project.ts';
import {
  building,
  type Door,
  keyLock,
  lever,
  type Room,
  stairTrap,
} from '../domain/testing/smallBuilding.ts';
import { type BuildingCheck, createBuildingCheck } from './buildingCheck.ts';

/** The walk waits until the test runs it. */
function held(): BuildingCheck & { readonly run: () => void; readonly waits: () => boolean } {
  let work: (() => void) | undefined;
  const check = createBuildingCheck({
    atOnceUpTo: 0,
    later: (next) => {
      work = next;
      return () => (work = undefined);
    },
  });
  const run = () => {
    const now = work;
    work = undefined;
    now?.();
  };
  return { ...check, run, waits: () => work !== undefined };
}

const states = (project: Project) =>
  Object.fromEntries([...judgeBuilding(project).decisions].map(([id, one]) => [id, shownState(one, false)]));
const shownStates = ({ shown }: BuildingCheck, project: Project) => {
  const { decisions, checking } = shown(project);
  return Object.fromEntries([...decisions].map(([id, one]) => [id, shownState(one, checking)]));
};
const answered = (project: Project, id: string, change: Partial<Opening>): Project => {
  const before = project.openings[id];
  if (!before) throw new Error(`${id} is not there.`);
  return { ...project, openings: { ...project.openings, [id]: { ...before, ...change } } };
};

const spaces = ['Street', 'A', 'B', 'C'] as const;
const kinds: readonly Space['kind'][] = ['room', 'corridor', 'stair', 'lobby', 'elevator'];
const someFacts: readonly FactValues[] = [
  {},
  { lockFunction: 'storeroom' },
  { lockFunction: 'storeroom', readerSides: 'secure' },
  { exitDirection: 'both' },
  { egressRole: 'stairDischarge' },
  { readerSides: 'both' },
];
const someChoices = [lever, keyLock, 'magnet/safe/credentialOut', 'batteryLock/asIs/free'];
const aKind = fc.constantFrom(...kinds);
const aDoor = fc.record({
  from: fc.constantFrom(...spaces),
  to: fc.constantFrom(...spaces),
  facts: fc.constantFrom(...someFacts),
  chosen: fc.constantFrom(...someChoices),
});
const aBuilding = fc
  .tuple(fc.tuple(aKind, aKind, aKind), fc.array(aDoor, { minLength: 2, maxLength: 5 }))
  .map(([[a, b, c], doors]) => {
    const rooms: Room[] = [
      ['Street', 'outside'],
      ['A', a, 6],
      ['B', b, 6],
      ['C', c],
    ];
    return building(
      rooms,
      doors.map(({ from, to, facts, chosen }, at): Door => [`${at}`, from, to, facts, chosen]),
    );
  });
const anAnswer = fc.record({
  door: fc.nat(),
  fact: fc.constantFrom<readonly [string, unknown]>(
    ['lockFunction', 'passage'],
    ['lockFunction', 'storeroom'],
    ['exitDirection', 'both'],
    ['exitDirection', 'towardSecure'],
    ['readerSides', 'none'],
  ),
});

describe('what a screen is shown of the decisions', () => {
  test('is never settled where the building leaves it otherwise, and is the walked answer after the walk', () => {
    const found = new Set<string>();
    let takenBack = 0;
    fc.assert(
      fc.property(aBuilding, fc.array(anAnswer, { minLength: 1, maxLength: 3 }), (start, answers) => {
        const check = held();
        let project = start;
        const wrong: string[] = [];
        const look = () => {
          const truth = states(project);
          const shown = shownStates(check, project);
          const alone = decideAll(project);
          for (const [id, state] of Object.entries(shown)) {
            found.add(`${state} ${truth[id]}`);
            if (alone.get(id)?.state === 'settled' && truth[id] === 'severe') takenBack++;
            if (state === 'settled' && truth[id] !== 'settled') wrong.push(`${id}: ${truth[id]}`);
          }
        };
        look();
        for (const { door, fact } of answers) {
          const ids = Object.keys(project.openings);
          const id = ids[door % ids.length] as string;
          const facts = { ...project.openings[id]?.facts, [fact[0]]: known(fact[1]) } as Opening['facts'];
          project = answered(project, id, { facts });
          look();
        }
        check.walk(project);
        check.run();
        look();
        expect(wrong).toEqual([]);
        expect(shownStates(check, project)).toEqual(states(project));
      }),
      { numRuns: 120, seed: 20261130 },
    );
    // Otherwise nothing was tried: doors that settle, and settled by themselves where the building shuts people in.
    expect([...found]).toEqual(
      expect.arrayContaining(['settled settled', 'checking settled', 'checking severe', 'severe severe']),
    );
    expect(takenBack).toBeGreaterThan(50);
  });

  test('an edit that the walk does not read leaves what was walked', () => {
    const check = held();
    const trap = stairTrap();
    check.walk(trap);
    check.run();
    const noted = answered(trap, 'S-2', { notes: 'Paint is fresh.' });
    expect(check.shown(noted).checking).toBe(false);
    expect(check.shown(answered(noted, 'S-2', { mark: 'S-2A' })).checking).toBe(true);
  });

  test('what was found last stands until the building is walked again, and one walk follows many edits', () => {
    const check = held();
    const trap = stairTrap();
    check.walk(trap);
    check.run();
    const facts = { ...trap.openings['S-3']?.facts, lockFunction: known('passage' as const) };
    const mended = answered(trap, 'S-3', { facts });
    expect(shownStates(check, mended)['S-2']).toBe('severe');
    let told = 0;
    check.subscribe(() => told++);
    check.walk(mended);
    const again = answered(mended, 'S-1', { facts: { ...mended.openings['S-1']?.facts } });
    check.walk(again);
    expect(check.waits()).toBe(true);
    check.run();
    expect([told, check.waits()]).toEqual([1, false]);
    expect(shownStates(check, again)['S-2']).toBe(states(again)['S-2']);
  });
});
