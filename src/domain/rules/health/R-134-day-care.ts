import { text, under } from '../../codes/sections.ts';
import { all, any, ibc, is, nfpa101, over, yes } from '../../logic/condition.ts';
import { doing } from '../doing.ts';
import { type CaseRow, cases, defineRule } from '../rule.ts';
import { without } from '../without.ts';

const room = { roomUse: 'dayCare', occupancyGroup: 'E', occupantLoad: 11 } as const;
const dayCare = any(is('roomUse', 'dayCare'), is('occupancyGroup', 'I-4'));
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

export const R134 = defineRule({
  id: 'R-134',
  title: 'Day care',
  family: 'health',
  book: 'ibc',
  cites: [
    under('educationalLocking'),
    under('exitsRequired'),
    text('nfpa101', 'chapters 16 and 17', 'Day care'),
  ],
  confidence: 'memory',
  note: 'From general knowledge throughout.',
  why: 'Small children cannot operate unfamiliar hardware, and some are carried out.',
  clauses: [
    {
      key: 'a',
      effect: 'signOff',
      grade: 'must',
      when: dayCare,
      of: { not: { release: ['free'] } },
      says: 'A reviewer signs for a day-care door that does not simply open by its lever or bar.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'note',
      when: dayCare,
      says: 'Children leave by this door: keep hardware plain, one motion, at the usual height.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: all(ibc(), dayCare, over('occupantLoad', 'dayCareSecondExitIbc')),
      says: 'A room with more than 10 children of two and a half years or less needs two exits.',
    },
    {
      key: 'd',
      effect: 'caution',
      when: all(nfpa101(), dayCare),
      says: 'NFPA 101 requires that restroom doors open from outside and closets from inside, and panic hardware from 100 people.',
    },
    {
      key: 'e',
      effect: 'caution',
      when: all(is('roomUse', 'dayCare'), yes('groupE')),
      of: { release: ['delayed'] },
      says: 'Day care classified as Group E is not a classroom for the delayed-egress exception; only a center in I-4 is outside that limit.',
    },
  ],
  cases: cases(
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
      [
        'group not known',
        { roomUse: 'dayCare' },
        'unknown',
        { clause: 'e', on: 'delayedMagnet/safe/delayed' },
      ],
      ['free bar', room, 'no', { clause: 'e', on: 'exitTrim/secure/free' }],
    ]),
  ),
});
