import { under } from '../../codes/sections.ts';
import { all, ibc, not, over, yes } from '../../logic/condition.ts';
import { doing } from '../doing.ts';
import { type CaseRow, cases, defineRule } from '../rule.ts';
import { without } from '../without.ts';

const hall = { occupancyGroup: 'A-1', mainDoor: true, occupantLoad: 301, placeOfWorship: false } as const;
const largeMain = all(ibc(), yes('groupA'), yes('mainDoor'), over('occupantLoad', 'keyLockAssemblyLoadIbc'));
const key = 'mechanicalLock/none/keyInside';

function around(clause: string, on?: string): readonly CaseRow[] {
  const at = { clause, ...(on === undefined ? {} : { on }) };
  return [
    ['hall for 301', hall, 'yes', at],
    ['hall for 300', { ...hall, occupantLoad: 300 }, 'no', at],
    ['side door', { ...hall, mainDoor: false }, 'no', at],
    ['shop for 301', { ...hall, occupancyGroup: 'M' }, 'no', at],
    ['NFPA 101 alone', hall, 'no', { ...at, basis: { ibc: null, nfpa101: 2021 } }],
    ['IBC 2018', hall, 'yes', { ...at, basis: { ibc: 2018 } }],
    ['load not known', without(hall, 'occupantLoad'), 'unknown', at],
  ];
}

export const R105 = defineRule({
  id: 'R-105',
  title: 'Main entrance of a large assembly',
  family: 'rooms',
  book: 'ibc',
  cites: [under('locksAndLatches'), under('assemblyMainExit')],
  confidence: 'read',
  note: 'Places of worship may have the key lock at any load. The figure of NFPA 101 is in R-154.',
  why: 'Most of a crowd heads for the door it came in by.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(largeMain, not(yes('placeOfWorship'))),
      of: { release: ['keyInside'] },
      says: 'More than 300 people use this main entrance, so it may not have a lock that needs a key from inside.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: largeMain,
      of: { wired: true },
      says: 'A reviewer signs for any electric lock on the main entrance of an assembly for {occupantLoad}.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: largeMain,
      says: 'The main exit must be wide enough for half of the load.',
    },
  ],
  cases: cases(
    ...doing({ a: 'prohibit', b: 'signOff must', c: 'caution' }, [
      ...around('a', key),
      ['a free bar', hall, 'no', { clause: 'a', on: 'exitTrim/secure/free' }],
      ...around('b', 'exitTrim/secure/free'),
      ['a mechanical lock', hall, 'no', { clause: 'b', on: 'mechanicalLock/none/free' }],
      ...around('c'),
      ['church for 301', { ...hall, placeOfWorship: true }, 'no', { clause: 'a', on: key }],
      ['worship not asked', without(hall, 'placeOfWorship'), 'unknown', { clause: 'a', on: key }],
      [
        'church for 301',
        { ...hall, placeOfWorship: true },
        'yes',
        { clause: 'b', on: 'exitTrim/secure/free' },
      ],
    ]),
  ),
});
