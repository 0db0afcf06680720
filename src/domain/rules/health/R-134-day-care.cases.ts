import { doing } from '../doing.ts';
import { type CaseRow, cases } from '../rule.ts';
import { without } from '../without.ts';

const room = { roomUse: 'dayCare', occupancyGroup: 'E', occupantLoad: 11 } as const;

const nfpa = { nfpa101: 2021 } as const;

function around(clause: string, options: Omit<NonNullable<CaseRow[3]>, 'clause'> = {}): readonly CaseRow[] {
  const at = { clause, ...options };
  return [
    ['day-care room in a school', room, 'yes', at],
    ['office of a day-care center', { ...room, roomUse: 'office', occupancyGroup: 'I-4' }, 'yes', at],
    ['school classroom', { ...room, roomUse: 'classroom' }, 'no', at],
    ['room and group not known', without(room, 'roomUse', 'occupancyGroup'), 'unknown', at],
  ];
}

export const R134Cases = cases(
  ...doing({ a: 'signOff must', b: 'signOff note', c: 'caution', d: 'caution' }, [
    ...around('a', { on: 'magnet/safe/sensor' }),
    ['free lever', room, 'no', { clause: 'a', on: 'mortiseLock/secure/free' }],
    ...around('b'),
    ...around('c'),
    ['room for 10', { ...room, occupantLoad: 10 }, 'no', { clause: 'c' }],
    ['NFPA 101 alone', room, 'no', { clause: 'c', basis: { ibc: null, nfpa101: 2021 } }],
    ...around('d', { basis: nfpa }),
    ['IBC only', room, 'no', { clause: 'd' }],
    ['day care in E', room, 'yes', { clause: 'e', on: 'delayedMagnet/safe/delayed', does: 'caution' }],
    [
      'day care in I-4',
      { ...room, occupancyGroup: 'I-4' },
      'no',
      { clause: 'e', on: 'delayedMagnet/safe/delayed' },
    ],
    [
      'school classroom',
      { ...room, roomUse: 'classroom' },
      'no',
      { clause: 'e', on: 'delayedMagnet/safe/delayed' },
    ],
    ['group not known', { roomUse: 'dayCare' }, 'unknown', { clause: 'e', on: 'delayedMagnet/safe/delayed' }],
    ['free bar', room, 'no', { clause: 'e', on: 'exitTrim/secure/free' }],
  ]),
);
