import { text } from '../../codes/sections.ts';
import { all, any, is, isKnown, not, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

const hall = {
  egressRole: 'exitAccess',
  doorType: 'single',
  occupancyGroup: 'A-3',
  occupantLoad: 120,
  roomUse: 'other',
  readerSides: 'none',
} as const;

export const N08 = defineRule({
  id: 'N-08',
  title: 'No lock is acceptable where nothing latches and nothing must',
  family: 'needs',
  book: 'project',
  cites: [text('project', '', 'Owner’s wish')],
  confidence: 'project',
  why: 'A push/pull leaf may stay as it is; a leaf that has or needs a latch already has a lock.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: not(is('latch', 'pushPull', 'roller')),
      of: { family: ['none'] },
      says: 'The leaf carries a latch or lock, so it is not a push/pull opening.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: any(
        yes('fireRated'),
        is('roomUse', 'patientRoom'),
        all(isKnown('suiteDoor'), is('suiteDoor', 'perimeter')),
      ),
      of: { family: ['none'] },
      says: 'This door must latch by itself, and push and pull alone does not.',
    },
    {
      key: 'd',
      effect: 'prohibit',
      when: all(yes('panicRequired'), is('latch', 'roller')),
      of: { family: ['none'] },
      says: 'A roller latch holds this door, and in this space only panic hardware may: remove the roller latch, or add a bar.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: not(is('securityNeed', 'low')),
      of: { family: ['none'] },
      says: 'Nothing locks this opening at any time, and the security need is {securityNeed}.',
    },
  ],
  cases: cases(
    [
      'roller latch of a hall',
      { ...hall, latch: 'roller' },
      'yes',
      { clause: 'd', on: 'noLock/none/free', does: 'prohibit' },
    ],
    [
      'push and pull at a hall',
      { ...hall, latch: 'pushPull' },
      'no',
      { clause: 'd', on: 'noLock/none/free' },
    ],
    [
      'roller latch of a small room',
      { ...hall, latch: 'roller', occupantLoad: 20 },
      'no',
      { clause: 'd', on: 'noLock/none/free' },
    ],
    ['hall, latch not known', hall, 'unknown', { clause: 'd', on: 'noLock/none/free' }],
    ['bored latch', { latch: 'bored' }, 'yes', { clause: 'a', on: 'noLock/none/free', does: 'prohibit' }],
    ['push and pull', { latch: 'pushPull' }, 'no', { clause: 'a', on: 'noLock/none/free' }],
    ['roller latch', { latch: 'roller' }, 'no', { clause: 'a', on: 'noLock/none/free' }],
    ['latch not known', {}, 'unknown', { clause: 'a', on: 'noLock/none/free' }],
    [
      'a mechanical lock is a lock',
      { latch: 'bored' },
      'no',
      { clause: 'a', on: 'mechanicalLock/none/free' },
    ],
    ['fire door', { fireRatingMin: 90 }, 'yes', { clause: 'b', on: 'noLock/none/free', does: 'prohibit' }],
    [
      'patient room',
      { fireRatingMin: 0, wallRatingMin: 0, roomUse: 'patientRoom' },
      'yes',
      { clause: 'b', on: 'noLock/none/free' },
    ],
    [
      'suite entrance',
      { fireRatingMin: 0, wallRatingMin: 0, roomUse: 'office', suiteDoor: 'perimeter' },
      'yes',
      { clause: 'b', on: 'noLock/none/free' },
    ],
    [
      'inside a suite',
      { fireRatingMin: 0, wallRatingMin: 0, roomUse: 'office', suiteDoor: 'inside' },
      'no',
      { clause: 'b', on: 'noLock/none/free' },
    ],
    [
      'suite not asked, unrated office',
      { fireRatingMin: 0, wallRatingMin: 0, roomUse: 'office' },
      'no',
      { clause: 'b', on: 'noLock/none/free' },
    ],
    ['rating not known', { roomUse: 'office' }, 'unknown', { clause: 'b', on: 'noLock/none/free' }],
    [
      'a mechanical lock latches',
      { fireRatingMin: 90 },
      'no',
      { clause: 'b', on: 'mechanicalLock/none/free' },
    ],
    [
      'medium need',
      { securityNeed: 'medium' },
      'yes',
      { clause: 'c', on: 'noLock/none/free', does: 'caution' },
    ],
    ['low need', { securityNeed: 'low' }, 'no', { clause: 'c', on: 'noLock/none/free' }],
    ['need not known', {}, 'unknown', { clause: 'c', on: 'noLock/none/free' }],
    ['a lock is not meant', { securityNeed: 'high' }, 'no', { clause: 'c', on: 'mechanicalLock/none/free' }],
  ),
});
