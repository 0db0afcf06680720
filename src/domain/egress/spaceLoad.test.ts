import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CodeBasis, defaultBasis } from '../codes/basis.ts';
import { newSpace } from '../model/newProject.ts';
import type { Space } from '../model/project.ts';
import { type Use, uses } from '../model/uses.ts';
import { aBasis } from '../testing/arbitraries.ts';
import { nfpaOfUse } from './nfpaOfUse.ts';
import { loadOf, loadsDiffer, peopleIn } from './spaceLoad.ts';

const room = (use: Use | null, areaFt2: number | null, occupantLoad: number | null = null): Space => ({
  ...newSpace('s', 'Room'),
  use,
  areaFt2,
  occupantLoad,
});
const ibc = (year: 2018 | 2021 | 2024): CodeBasis => ({ ...defaultBasis, ibc: year, nfpa101: null });
const both: CodeBasis = { ...defaultBasis, ibc: 2021, nfpa101: 2021 };
const nfpaOnly: CodeBasis = { ...both, ibc: null };

describe('load of a space from use and area', () => {
  // W and D: published and derived examples, with their sources in tests/checks/egress.test.ts.
  test.each<[string, Use, number, CodeBasis, number]>([
    ['W-01 music room 40 × 28 ft, IBC 2018 Table 1004.5', 'classroom', 40 * 28, ibc(2018), 56],
    ['W-02 classroom, IBC 2021 Table 1004.5', 'classroom', 960, ibc(2021), 48],
    ['W-03 dining room, IBC 2024 Table 1004.5', 'assemblyTables', 4500, ibc(2024), 300],
    ['W-04 office, IBC 2018 Table 1004.5', 'business', 3000, ibc(2018), 20],
    ['D-03 one below the panic load, IBC 2021', 'assemblyTables', 735, ibc(2021), 49],
    ['D-03 at the panic load, IBC 2021', 'assemblyTables', 735.1, ibc(2021), 50],
    ['D-04 store, IBC 2021', 'mercantile', 6000, ibc(2021), 100],
  ])('%s', (_what, use, area, basis, people) => {
    const load = loadOf(room(use, area), basis);
    expect(load.people).toBe(people);
    expect(load.byCode).toHaveLength(1);
    expect(load.byCode[0]?.reason.rests).toMatch(
      new RegExp(`^IBC ${basis.ibc} Table 1004\\.5; (read second-hand|from general knowledge)`),
    );
  });

  test('the line shows figures, factor, use and how the floor is measured', () => {
    const [line] = loadOf(room('classroom', 1120), ibc(2018)).reasons;
    expect(line?.says).toBe('IBC 2018: 1,120 ft² ÷ 20 ft² a person (Classroom, net floor) = 56 people.');
  });

  test('a figure read only in the table of 2015 is not said to be read in a later one', () => {
    const rests = (use: Use) => loadOf(room(use, 500), ibc(2024)).reasons[0]?.rests;
    expect(rests('libraryReading')).toContain('from general knowledge');
    expect(rests('classroom')).toContain('second-hand');
  });

  test('under both codes the larger governs and both are shown: NFPA 101 counts a kitchen at 100 ft² (from memory)', () => {
    const load = loadOf(room('kitchen', 2000), both);
    expect(load.byCode.map((one) => one.people)).toEqual([10, 20]);
    expect(load.people).toBe(20);
    expect(load.reasons.at(-1)?.says).toContain('the larger load counts');
    expect(loadOf(room('outpatient', 3000), both).people).toBe(30);
  });

  test('where NFPA 101 sets no load, that of the IBC stands alone', () => {
    const load = loadOf(room('warehouse', 5000), both);
    expect(load.byCode.map((one) => one.is)).toEqual(['known', 'notAsked']);
    expect(load.people).toBe(10);
    expect(loadOf(room('warehouse', 5000), nfpaOnly).people).toBeNull();
    expect(loadOf(room('warehouse', 5000), nfpaOnly).says).toContain('no load for storage');
  });

  test('a factor that is not kept is asked for, never taken from the other code', () => {
    const load = loadOf(room('mercantile', 6000), both);
    expect(load.byCode.map((one) => one.is)).toEqual(['known', 'unknown']);
    expect(load.people).toBeNull();
    expect(load.says).toContain('by how its floor relates to the street');
    expect(loadOf(room('serverHall', 600), ibc(2018)).says).toContain('does not list');
    expect(loadOf(room('serverHall', 600), ibc(2021)).people).toBe(2);
  });

  test('the larger of a load somebody gave and of use and area governs, and a difference is told', () => {
    expect(loadOf(room('classroom', 1120, 56), ibc(2021)).says).toContain('come to the same');
    const fewer = loadOf(room('classroom', 1120, 40), ibc(2021));
    expect(fewer.people).toBe(56);
    expect(peopleIn(room('classroom', 1120, 40), ibc(2021))).toBe(56);
    expect(fewer.computed).toBe(56);
    expect(fewer.says).toBe(
      '56 people, the larger of 40 as given and 56 by use and area. Correct the one that is wrong.',
    );
    expect(fewer.reasons.at(-1)?.says).toContain('approval of the building official');
    const more = loadOf(room('classroom', 1120, 60), ibc(2021));
    expect([more.people, loadsDiffer(more), loadsDiffer(fewer)]).toEqual([60, true, true]);
    expect(more.reasons.map((one) => one.says).join()).not.toContain('approval');
    expect(loadOf(room(null, null, 1), ibc(2021)).says).toBe('1 person, as given.');
  });

  test('each code says its division and what it rests on', () => {
    const load = loadOf(room('kitchen', 2000), both);
    expect(load.byCode.map(({ book, is, reason }) => [book, is, reason.says, reason.rests])).toEqual([
      [
        'IBC',
        'known',
        'IBC 2021: 2,000 ft² ÷ 200 ft² a person (Commercial kitchen, gross floor, inside the walls) = 10 people.',
        'IBC 2021 Table 1004.5; from general knowledge, not read in the code’s text',
      ],
      [
        'NFPA 101',
        'known',
        'NFPA 101 2021: 2,000 ft² ÷ 100 ft² a person (Commercial kitchen, gross floor, inside the walls) = 20 people.',
        'NFPA 101 2021 Table 7.3.1.2; from general knowledge, not read in the code’s text',
      ],
    ]);
    // A use that both count alike is shown with the figure of the other table.
    expect(loadOf(room('classroom', 1000), nfpaOnly).reasons[0]?.says).toContain('÷ 20 ft² a person');
    expect(loadOf(room('warehouse', 5000), nfpaOnly).byCode[0]?.reason.rests).toContain(
      'Table 7.3.1.2; from general',
    );
    expect(loadOf(room('serverHall', 600), ibc(2018)).byCode[0]?.is).toBe('unknown');
    expect(load.says).toBe('20 people, worked out from use and area.');
    expect(loadsDiffer(load)).toBe(false);
  });

  test('one code alone, or an equal load, has nothing to compare', () => {
    const says = (space: Space, basis: CodeBasis) =>
      loadOf(space, basis).reasons.map((one) => [one.says.split(':')[0], one.rests === '']);
    expect(says(room('classroom', 1120, 56), ibc(2021))).toEqual([['IBC 2021', false]]);
    expect(loadsDiffer(loadOf(room('classroom', 1120, 56), ibc(2021)))).toBe(false);
    expect(says(room('kitchen', 2000), ibc(2021))).toEqual([['IBC 2021', false]]);
    expect(says(room('business', null, 3), both)).toEqual([]);
    expect(says(room(null, 900, 3), both)).toEqual([]);
    expect(loadOf(room('business', null, 3), both).people).toBe(3);
    expect(loadOf(room('mercantile', 6000, 3), both).people).toBe(3);
  });

  test('where use and load were read from a model, it says so', () => {
    const from = { ...room('business', 900, 6), useFrom: 'room name', occupantLoadFrom: 'door list' };
    expect(loadOf(from, ibc(2021)).reasons.slice(0, 2)).toEqual([
      { says: 'The use was read from the room name.', rests: '' },
      { says: 'The load was taken from the door list.', rests: '' },
    ]);
  });

  test('what is missing is named', () => {
    expect(loadOf(room(null, null), ibc(2021)).says).toBe(
      'Not known: what the floor is used for and the floor area are missing.',
    );
    expect(loadOf(room('business', null), ibc(2021)).says).toBe('Not known: the floor area is missing.');
    expect(loadOf(room('business', 900), { ...ibc(2021), ibc: null }).says).toBe(
      'Not known: an adopted building code is missing.',
    );
  });

  test('an answer is remembered for the space, and not for another basis', () => {
    const space = room('business', 5000);
    expect(loadOf(space, defaultBasis)).toBe(loadOf(space, defaultBasis));
    expect(loadOf(space, nfpaOnly)).not.toBe(loadOf(space, defaultBasis));
  });

  test('every use has its row under NFPA 101', () => {
    expect(Object.keys(nfpaOfUse).toSorted()).toEqual([...uses].toSorted());
  });
});

test('more area never lowers the load, and the short way to the load agrees with the long one', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...uses),
      aBasis,
      fc.double({ min: 0, max: 1e6, noNaN: true }),
      fc.double({ min: 0, max: 1e4, noNaN: true }),
      fc.option(fc.nat(900)),
      (use, basis, area, more, typed) => {
        const [small, large] = [room(use, area, typed), room(use, area + more, typed)];
        const [before, after] = [loadOf(small, basis).people, loadOf(large, basis).people];
        expect(before === null).toBe(after === null);
        expect(after ?? 0).toBeGreaterThanOrEqual(before ?? 0);
        expect(peopleIn(small, basis)).toBe(before);
      },
    ),
    { numRuns: 500 },
  );
});
