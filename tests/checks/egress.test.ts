import { describe, expect, test } from 'vitest';
import { defaultBasis } from '../../src/domain/codes/basis.ts';
import { capacityFactor, capacityOf, nfpaCapacityFactors } from '../../src/domain/egress/capacity.ts';
import { exitsByLoad, oneExitMayDo } from '../../src/domain/egress/exits.ts';
import { type FactorEdition, nfpaUseFactors } from '../../src/domain/egress/occupantFactors.ts';
import { occupantLoad, occupantLoadNfpa } from '../../src/domain/egress/occupantLoad.ts';
import { panicByLoad } from '../../src/domain/egress/panicByLoad.ts';
import type { Use } from '../../src/domain/model/uses.ts';
import { qty } from '../../src/domain/units/quantity.ts';

/** Width a load asks for, in: people × factor. Source: IBC 1005.3. */
const widthRequired = (load: number, factor: number) => load * factor;
const people = (value: number) => qty(value, 'people');
const load = (use: Use, area: number, edition: FactorEdition = 2021) => {
  const found = occupantLoad(use, qty(area, 'ft²'), edition);
  return found.ok ? found.people : people(Number.NaN);
};
const voice = { sprinklered: true, voiceAlarm: true, group: 'A-2' } as const;
const sprinklersOnly = { sprinklered: true, voiceAlarm: false, group: 'A-2' } as const;

describe('published worked examples of egress', () => {
  test('W-01, trade article of Nov 2019 on a school music room, IBC Table 1004.5 and 1010.1.10: 40 × 28 ft at 20 net are 56 people', () => {
    const found = load('classroom', 40 * 28, 2018);
    expect(found).toBe(56);
    expect(oneExitMayDo({ group: 'E', people: found, commonPath: qty(40, 'ft') }).answer).toBe('moreThanOne');
    expect(exitsByLoad(found)).toBe(2);
    expect(panicByLoad('E', found, { ...defaultBasis, ibc: 2018 })).toBe(true);
  });
  test('W-02, trade lesson on occupant load, IBC Table 1004.5 and 1006.2.1: 960 ft² of classroom are 48, one exit may do, no panic hardware by load', () => {
    const found = load('classroom', 960);
    expect(found).toBe(48);
    expect(oneExitMayDo({ group: 'E', people: found, commonPath: qty(75, 'ft') }).answer).toBe('oneMayDo');
    expect(panicByLoad('E', found, defaultBasis)).toBe(false);
  });
  test('W-03, public guide on egress paths, IBC Table 1004.5 and 1005.3: 4,500 ft² of dining are 300; 45 in only with voice alarm (audit), else 60 in', () => {
    const found = load('assemblyTables', 4500);
    expect(found).toBe(300);
    expect(widthRequired(found, capacityFactor('other', voice))).toBeCloseTo(45, 9);
    expect(widthRequired(found, capacityFactor('other', sprinklersOnly))).toBeCloseTo(60, 9);
    expect(exitsByLoad(found)).toBe(2);
    expect(panicByLoad('A-2', found, defaultBasis)).toBe(true);
  });
  test('W-04, the same guide, IBC 2018 Table 1004.5: 3,000 ft² of office are 20', () => {
    expect(load('business', 3000, 2018)).toBe(20);
  });
  test('W-05, the same guide, IBC 1005.3.2: 300 people, sprinklers and voice alarm (audit) are 45 in', () => {
    expect(widthRequired(people(300), capacityFactor('other', { ...voice, group: 'B' }))).toBeCloseTo(45, 9);
    expect(
      widthRequired(people(300), capacityFactor('other', { sprinklered: true, group: 'B' })),
    ).toBeCloseTo(60, 9);
  });
  test('W-06, public page on occupant load, IBC 2018 1005.3 and Table 1006.2.1: 1,500 ft² of office are 10; 2.0 and 1.5 in; 32 in governs; one exit may do for the space (audit)', () => {
    const found = load('business', 1500, 2018);
    const given = { sprinklered: true, voiceAlarm: true, group: 'B' } as const;
    expect(found).toBe(10);
    expect(widthRequired(found, capacityFactor('stair', given))).toBeCloseTo(2, 9);
    expect(widthRequired(found, capacityFactor('other', given))).toBeCloseTo(1.5, 9);
    expect(
      oneExitMayDo({ group: 'B', people: found, sprinklered: true, commonPath: qty(100, 'ft') }).answer,
    ).toBe('oneMayDo');
  });
  test('W-07, exam forum thread, IBC 1005.3.1 and Table 1006.3.3: 550 people on a story need 3 exits, 36.7 in of stair each', () => {
    expect(exitsByLoad(people(550))).toBe(3);
    expect(widthRequired(people(550), capacityFactor('stair', { ...voice, group: 'B' })) / 3).toBeCloseTo(
      36.67,
      2,
    );
  });
  test('W-08, the same thread, IBC 1005.3.2: 153 people ask 22.95 in, the 32 in door governs', () => {
    const factor = capacityFactor('other', { ...voice, group: 'B' });
    expect(widthRequired(people(153), factor)).toBeCloseTo(22.95, 9);
  });
  test('W-09, the same thread, IBC Table 1006.3.3: 490 people need 2 exits; limits 500/501 and 1,000/1,001', () => {
    expect([490, 500, 501, 1000, 1001].map((count) => exitsByLoad(people(count)))).toEqual([2, 2, 3, 3, 4]);
  });
  test('W-10, public explainer on Table 1006.2.1, IBC 2015 Table 1004.1.2: 5,000 ft² of office are 50; since 2018 they are 34 (audit)', () => {
    expect([
      load('business', 5000, 2015),
      load('business', 5000, 2018),
      load('business', 5000, 2024),
    ]).toEqual([50, 34, 34]);
  });
  test('W-11, public exam page, IBC 2015 Table 1004.1.2: 2,000 ft² of office are 20', () => {
    expect(load('business', 2000, 2015)).toBe(20);
  });
  test('W-12, published exercise, NFPA 101 7.3.3: half of 100 people through a board-and-care door ask 10 in, the 32 in door governs', () => {
    expect(widthRequired(people(50), nfpaCapacityFactors.boardAndCare.other)).toBeCloseTo(10, 9);
  });
});

describe('derived cases of egress', () => {
  test('D-01, derived from IBC 1005.3.2: 34 in clear serve 170 people, 226 with the reduced factor', () => {
    expect(capacityOf(qty(34, 'in'), capacityFactor('other', {}))).toBe(170);
    expect(capacityOf(qty(34, 'in'), capacityFactor('other', voice))).toBe(226);
  });
  test('D-02, derived from IBC 1005.3.1: a 44 in stair serves 146 people, 220 with the reduced factor', () => {
    expect(capacityOf(qty(44, 'in'), capacityFactor('stair', {}))).toBe(146);
    expect(capacityOf(qty(44, 'in'), capacityFactor('stair', voice))).toBe(220);
  });
  test('D-03, derived from IBC Table 1004.5 and 1010.2.9 (2021): 735 ft² at 15 are 49 without panic hardware, 750 ft² are 50 with it', () => {
    const [below, at] = [load('assemblyTables', 735), load('assemblyTables', 750)];
    expect([below, at]).toEqual([49, 50]);
    expect([below, at].map((count) => panicByLoad('A-2', count, defaultBasis))).toEqual([false, true]);
    expect(load('assemblyTables', 735.1)).toBe(50);
  });
  test('D-04, derived from IBC Table 1004.5: 6,000 ft² of store are 100, and Group M needs no panic hardware by load', () => {
    expect(load('mercantile', 6000)).toBe(100);
    expect(panicByLoad('M', people(100), { ...defaultBasis, nfpa101: 2021 })).toBe(false);
  });
});

describe('limits of the tables', () => {
  test('IBC 1005.3 exceptions (2012 and later), second-hand: the reduced factor needs sprinklers AND voice alarm, never in H or I-2, never on a guess', () => {
    expect(capacityFactor('stair', { sprinklered: false, voiceAlarm: true, group: 'B' })).toBe(0.3);
    expect(capacityFactor('stair', { voiceAlarm: true, group: 'B' })).toBe(0.3);
    expect(capacityFactor('stair', { sprinklered: true, voiceAlarm: true })).toBe(0.3);
    for (const group of ['H-1', 'H-2', 'H-3', 'H-4', 'H-5', 'I-2'] as const) {
      expect(capacityFactor('other', { sprinklered: true, voiceAlarm: true, group })).toBe(0.2);
    }
    expect(capacityFactor('other', { sprinklered: true, voiceAlarm: true, group: 'I-3' })).toBe(0.15);
  });
  test.each([
    ['A-3', 49, 75, undefined],
    ['E', 49, 75, undefined],
    ['M', 49, 75, undefined],
    ['B', 49, 75, undefined],
    ['B', 49, 100, true],
    ['F-1', 30, 100, undefined],
    ['U', 30, 100, undefined],
    ['U', 49, 75, true],
    ['S-1', 29, 100, undefined],
    ['H-2', 3, 25, true],
    ['H-5', 10, 75, true],
    ['I-2', 10, 75, true],
    ['I-3', 10, 100, true],
    ['R-1', 10, 75, true],
    ['R-2', 20, 125, true],
  ] as const)(
    'IBC Table 1006.2.1 (2018 and later), partly from memory: Group %s, %i people, common path %i ft, sprinklered %s: one exit may do, one more person or foot not',
    (group, most, path, sprinklered) => {
      const ask = (count: number, feet: number) =>
        oneExitMayDo({
          group,
          people: people(count),
          commonPath: qty(feet, 'ft'),
          ...(sprinklered === undefined ? {} : { sprinklered }),
        }).answer;
      expect([ask(most, path), ask(most, path + 1)]).toEqual(['oneMayDo', 'moreThanOne']);
      expect(ask(50, path)).toBe('moreThanOne');
    },
  );
  test.each([
    ['A-2', 49],
    ['B', 49],
    ['S-2', 29],
    ['H-1', 3],
    ['H-4', 10],
    ['I-3', 10],
    ['I-4', 10],
    ['R-1', 10],
    ['R-4', 20],
  ] as const)(
    'IBC Table 1006.2.1, partly from memory: Group %s, one more than %i people needs a second exit',
    (group, most) => {
      const ask = (count: number) =>
        oneExitMayDo({ group, people: people(count), commonPath: qty(10, 'ft'), sprinklered: true }).answer;
      expect([ask(most), ask(most + 1)]).toEqual(['oneMayDo', 'moreThanOne']);
    },
  );
  test('IBC Table 1006.2.1: what is not measured or not sprinklered is asked, not guessed', () => {
    expect(oneExitMayDo({ group: 'B', people: people(10) }).answer).toBe('ask');
    for (const group of ['R-1', 'R-2', 'I-1.1', 'I-3', 'H-3', 'H-4'] as const) {
      expect(oneExitMayDo({ group, people: people(2), commonPath: qty(10, 'ft') }).answer).toBe('ask');
    }
    expect(oneExitMayDo({ group: 'B', people: people(31), commonPath: qty(76, 'ft') }).answer).toBe(
      'moreThanOne',
    );
  });
  test('NFPA 101 7.2.1.7 and 7.11, second-hand: panic hardware from 100 in assembly, education and day care, over 5 in high hazard', () => {
    const nfpaOnly = { ...defaultBasis, ibc: null, nfpa101: 2021 } as const;
    expect([99, 100].map((count) => panicByLoad('A-1', people(count), nfpaOnly))).toEqual([false, true]);
    expect([99, 100].map((count) => panicByLoad('I-4', people(count), nfpaOnly))).toEqual([false, true]);
    expect([5, 6].map((count) => panicByLoad('H-3', people(count), nfpaOnly))).toEqual([false, true]);
    expect(panicByLoad('H-3', people(1), defaultBasis)).toBe(true);
    expect(panicByLoad('E', people(60), nfpaOnly)).toBe(false);
    expect(panicByLoad('E', people(60), { ...nfpaOnly, ibc: 2021 })).toBe(true);
  });
  test('NFPA 101 Table 7.3.1.2 from memory: differs for stores and kitchens, and asks no load of storage', () => {
    const nfpa = (use: Parameters<typeof occupantLoadNfpa>[0]) => {
      const found = occupantLoadNfpa(use, qty(6000, 'ft²'));
      return found.ok ? found.people : found.says;
    };
    expect([
      nfpa('mercantileStreetFloor'),
      nfpa('mercantileStreetFloorsSeveral'),
      nfpa('mercantileAboveStreet'),
      nfpa('kitchen'),
    ]).toEqual([200, 150, 100, 60]);
    expect(nfpa('storage')).toContain('no load for storage');
    expect(occupantLoadNfpa('business', qty(-1, 'ft²')).ok).toBe(false);
  });
});

describe('the factor table itself', () => {
  test('NFPA 101 Table 7.3.3.1 from memory: in per person, stairs and level', () => {
    expect(nfpaCapacityFactors).toEqual({
      general: { stair: 0.3, other: 0.2 },
      healthCareSprinklered: { stair: 0.3, other: 0.2 },
      healthCareNotSprinklered: { stair: 0.6, other: 0.5 },
      boardAndCare: { stair: 0.4, other: 0.2 },
      highHazard: { stair: 0.7, other: 0.4 },
    });
  });
  test('NFPA 101 Table 7.3.1.2 from memory: the rows that differ, ft² a person', () => {
    expect(nfpaUseFactors).toEqual({
      business: 150,
      businessConcentrated: 50,
      assemblyChairs: 7,
      assemblyTables: 15,
      mercantileStreetFloor: 30,
      mercantileStreetFloorsSeveral: 40,
      mercantileBelowStreet: 30,
      mercantileAboveStreet: 60,
      kitchen: 100,
      industrial: 100,
      storage: null,
      ambulatoryCare: 150,
    });
  });
  test.each([
    ['assemblyChairs', 7],
    ['assemblyTables', 15],
    ['assemblyStanding', 5],
    ['gallery', 30],
    ['gaming', 11],
    ['classroom', 20],
    ['shop', 50],
    ['dayCare', 35],
    ['dormitory', 50],
    ['courtroom', 40],
    ['exercise', 50],
    ['industrial', 100],
    ['fabricationH5', 200],
    ['inpatient', 240],
    ['outpatient', 100],
    ['institutionalSleeping', 120],
    ['kitchen', 200],
    ['libraryReading', 50],
    ['libraryStacks', 100],
    ['lockerRoom', 50],
    ['mercantile', 60],
    ['mercantileStorage', 300],
    ['accessoryStorage', 300],
    ['parking', 200],
    ['residential', 200],
    ['pool', 50],
    ['poolDeck', 15],
    ['stage', 15],
    ['warehouse', 500],
    ['baggageClaim', 20],
    ['baggageHandling', 300],
    ['airportWaiting', 15],
    ['airportConcourse', 100],
    ['business', 150],
    ['businessConcentrated', 50],
    ['serverHall', 300],
  ] as const)(
    'IBC 2021 Table 1004.5, state and city copies and public guides: %s, %i ft² a person',
    (use, factor) => {
      expect(load(use, factor * 10)).toBe(10);
      expect(load(use, factor * 10 + 1)).toBe(11);
    },
  );
  test('what an edition does not list is refused, and loads of mixed uses are added', () => {
    expect(occupantLoad('serverHall', qty(300, 'ft²'), 2018)).toMatchObject({ ok: false });
    expect(occupantLoad('businessConcentrated', qty(300, 'ft²'), 2015)).toMatchObject({ ok: false });
    expect(occupantLoad('business', qty(Number.NaN, 'ft²'), 2021)).toMatchObject({ ok: false });
    expect(occupantLoad('business', qty(-1, 'ft²'), 2021)).toMatchObject({ ok: false });
    expect(occupantLoad('business', qty(0, 'ft²'), 2021)).toMatchObject({
      ok: true,
      people: 0,
      measure: 'gross',
      confidence: 'secondary',
    });
  });
});
