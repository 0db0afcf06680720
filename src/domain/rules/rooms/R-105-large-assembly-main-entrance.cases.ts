import { doing } from '../doing.ts';
import { type CaseRow, cases } from '../rule.ts';
import { without } from '../without.ts';

const hall = { occupancyGroup: 'A-1', mainDoor: true, occupantLoad: 301, placeOfWorship: false } as const;

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

export const R105Cases = cases(
  ...doing({ a: 'prohibit', b: 'signOff must', c: 'caution' }, [
    ...around('a', key),
    ['a free bar', hall, 'no', { clause: 'a', on: 'exitTrim/secure/free' }],
    ...around('b', 'exitTrim/secure/free'),
    ['a mechanical lock', hall, 'no', { clause: 'b', on: 'mechanicalLock/none/free' }],
    ...around('c'),
    ['church for 301', { ...hall, placeOfWorship: true }, 'no', { clause: 'a', on: key }],
    ['worship not asked', without(hall, 'placeOfWorship'), 'unknown', { clause: 'a', on: key }],
    ['church for 301', { ...hall, placeOfWorship: true }, 'yes', { clause: 'b', on: 'exitTrim/secure/free' }],
  ]),
);
