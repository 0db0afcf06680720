import { describe, expect, test } from 'vitest';
import { type CodeBasis, defaultBasis } from '../codes/basis.ts';
import { qty } from '../units/quantity.ts';
import { oneExitMayDo } from './exits.ts';
import { type ExitsGiven, exitsNeeded, neededInWords } from './exitsNeeded.ts';
import { occupantLoad, occupantLoadNfpa } from './occupantLoad.ts';
import { panicReasons } from './panicReasons.ts';
import { resting, surveyed } from './reason.ts';
import { widthFactors } from './widthFactors.ts';

const ibc: CodeBasis = { ...defaultBasis, ibc: 2021, nfpa101: null };
const both: CodeBasis = { ...ibc, nfpa101: 2021 };
const nfpa: CodeBasis = { ...both, ibc: null };
const none: CodeBasis = { ...ibc, ibc: null };

const table = 'IBC 2021 1006.2.1, Table 1006.2.1';
const chapters = surveyed(
  'NFPA 101 2021: when one exit is enough is stated in its occupancy chapter, which is not computed here.',
);
const byLoad = (says: string) => resting(says, 'IBC 2021 1006.2.1.1', 'secondary');

describe('how many exits a space needs, with the reasons', () => {
  const office: ExitsGiven = { people: 10, group: 'B', commonPathFt: 75, sprinklered: undefined };
  test.each<[string, ExitsGiven, CodeBasis, string, readonly { says: string }[] | undefined]>([
    [
      'load and path within the table',
      { ...office, people: 49, commonPathFt: 100, sprinklered: true },
      both,
      '1',
      [resting('Load and common path stay within the table (49 people, 100 ft).', table, 'memory'), chapters],
    ],
    [
      'the path too long without sprinklers',
      { ...office, people: 49, commonPathFt: 100 },
      ibc,
      '2',
      [
        resting('The common path is longer than 75 ft, so a second exit is needed.', table, 'memory'),
        byLoad('49 people need 2: from 501 people three, from 1,001 four, else two.'),
      ],
    ],
    [
      'too many people',
      { ...office, people: 550 },
      both,
      '3',
      [
        resting('More than 49 people in Group B need a second exit.', table, 'memory'),
        byLoad('550 people need 3: from 501 people three, from 1,001 four, else two.'),
        chapters,
      ],
    ],
    [
      'path not measured',
      { ...office, commonPathFt: null },
      ibc,
      '1 or 2',
      [resting('The common path must be 100 ft or less; it is not measured.', table, 'memory')],
    ],
    [
      'a group whose row holds with sprinklers only',
      { ...office, group: 'I-2' },
      ibc,
      '1 or 2',
      [resting('One exit for Group I-2 is tabulated only for a sprinklered building.', table, 'memory')],
    ],
    [
      'group not known, few people',
      { ...office, group: undefined },
      both,
      '1 or 2',
      [surveyed('The table goes by occupancy group, which is not known for this space.'), chapters],
    ],
    [
      'group not known, many people',
      { ...office, group: undefined, people: 1200 },
      ibc,
      '4',
      [
        resting('More than 49 people need a second exit in every group.', table, 'memory'),
        byLoad('1,200 people need 4: from 501 people three, from 1,001 four, else two.'),
      ],
    ],
    [
      'NFPA 101 alone',
      office,
      nfpa,
      '1 or 2',
      [
        resting(
          'Two, unless its occupancy chapter allows one; those chapters are not computed here.',
          'NFPA 101 2021 7.4.1.2',
          'memory',
        ),
      ],
    ],
    [
      'NFPA 101 alone, many people',
      { ...office, people: 501 },
      nfpa,
      '3',
      [
        resting(
          '501 people need 3: over 500 people three, over 1,000 four.',
          'NFPA 101 2021 7.4.1.2',
          'memory',
        ),
      ],
    ],
    ['nobody in it', { ...office, people: 0 }, ibc, '0', [surveyed('It has no occupants.')]],
    ['load not known', { ...office, people: null }, ibc, 'not known', undefined],
    ['no code adopted', office, none, 'not known', undefined],
  ])('%s', (_what, given, basis, words, reasons) => {
    const needed = exitsNeeded(given, basis);
    expect(neededInWords(needed)).toBe(words);
    expect(needed?.reasons).toEqual(reasons);
  });

  test('what the survey says rests on no section', () => {
    expect(surveyed('Counted.')).toEqual({ says: 'Counted.', rests: '' });
  });

  test('a group without a row in the table asks', () => {
    const people = qty(5, 'people');
    expect(oneExitMayDo({ group: 'R-5' as 'R-4', people })).toEqual({
      answer: 'ask',
      says: 'The table has no row for Group R-5.',
    });
  });
});

describe('panic hardware by group and load, code by code', () => {
  const words = (group: Parameters<typeof panicReasons>[0], people: number, basis: CodeBasis) => {
    const { asked, reasons } = panicReasons(group, qty(people, 'people'), basis);
    return [asked, ...reasons.map(({ says }) => says.includes('doors need panic hardware'))];
  };
  // Whether any code asks, then each adopted code. IBC: A and E from 50, H always; NFPA 101: A, E, day care from 100, H over 5.
  test.each([
    ['A-3', 49, [false, false, false]],
    ['A-3', 50, [true, true, false]],
    ['A-3', 99, [true, true, false]],
    ['E', 100, [true, true, true]],
    ['I-4', 99, [false, false, false]],
    ['I-4', 100, [true, false, true]],
    ['H-2', 5, [true, true, false]],
    ['H-2', 6, [true, true, true]],
    ['B', 500, [false, false, false]],
  ] as const)('Group %s, %i people: %j', (group, people, [any, ofIbc, ofNfpa]) => {
    expect(words(group, people, both)).toEqual([any, ofIbc, ofNfpa]);
    expect(words(group, people, ibc)).toEqual([ofIbc, ofIbc]);
    expect(words(group, people, nfpa)).toEqual([ofNfpa, ofNfpa]);
    expect(words(group, people, none)).toEqual([false]);
  });

  test('each reason gives load, group, limit and section', () => {
    expect(panicReasons('H-2', qty(5, 'people'), both).reasons).toEqual([
      resting(
        '5 people in Group H-2: latching doors need panic hardware (Groups A and E from 50, Group H at any load).',
        'IBC 2021 1010.2.9 (Panic and fire exit hardware)',
        'read',
      ),
      resting(
        '5 people in Group H-2: no panic hardware by group and load (assembly, education and day care from 100, high hazard over 5).',
        'NFPA 101 2021 7.2.1.7 (Panic and fire exit hardware)',
        'secondary',
      ),
    ]);
  });
});

describe('width a person takes', () => {
  // NFPA 101 Table 7.3.3.1, level components, from memory: health care 0.5 without sprinklers, high hazard 0.4, else 0.2.
  test.each([
    ['I-2', false, 0.5],
    ['I-2', undefined, 0.5],
    ['I-2', true, 0.2],
    ['H-3', true, 0.4],
    ['H-3', false, 0.4],
    ['B', false, 0.2],
    [undefined, false, 0.2],
  ] as const)('NFPA 101, Group %s, sprinklered %s: %d in', (group, sprinklered, inPerPerson) => {
    const protection = {
      ...(group === undefined ? {} : { group }),
      ...(sprinklered === undefined ? {} : { sprinklered }),
    };
    expect(widthFactors(protection, nfpa)).toEqual([
      { inPerPerson, source: 'NFPA 101 2021 Table 7.3.3.1', confidence: 'memory' },
    ]);
  });

  test('each adopted code is named; without one the IBC, as not adopted', () => {
    const reduced = { sprinklered: true, voiceAlarm: true, group: 'B' } as const;
    const named = (given: Parameters<typeof widthFactors>[0], basis: CodeBasis) =>
      widthFactors(given, basis).map(({ inPerPerson, source, confidence }) => [
        inPerPerson,
        source,
        confidence,
      ]);
    const ofIbc = 'IBC 2021 1005.3 (Egress capacity)';
    const ofNfpa = [0.2, 'NFPA 101 2021 Table 7.3.3.1', 'memory'];
    expect(named({}, ibc)).toEqual([[0.2, ofIbc, 'read']]);
    expect(named(reduced, both)).toEqual([[0.15, ofIbc, 'secondary'], ofNfpa]);
    expect(named({}, none)).toEqual([[0.2, 'IBC 2024 1005.3 (Egress capacity), not adopted here', 'read']]);
  });
});

test('an area that is no area is refused', () => {
  const refused = { ok: false, says: 'The area must be a number of square feet, zero or more.' };
  for (const area of [-1, Number.NaN, Number.POSITIVE_INFINITY]) {
    expect(occupantLoad('business', qty(area, 'ft²'), 2021)).toEqual(refused);
    expect(occupantLoadNfpa('business', qty(area, 'ft²'))).toEqual(refused);
  }
});
