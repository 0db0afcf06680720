import { under } from '../../codes/sections.ts';
import { all, any, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const lockdown = all(is('roomUse', 'classroom', 'dayCare'), yes('wishLockdown'));

export const R101 = defineRule({
  id: 'R-101',
  title: 'Classroom lockdown',
  family: 'rooms',
  book: 'ibc',
  cites: [under('educationalLocking'), under('educationalLockingNfpa')],
  confidence: 'read',
  note: 'Day care is named in the fire code; whether the building code names it too was not seen.',
  why: 'A room locked against an intruder must still let children out and responders in.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: lockdown,
      items: ['outsideUnlockKey'],
      says: 'Staff and responders must be able to unlock this room from outside with a key or another approved means.',
    },
    {
      key: 'b',
      effect: 'finding',
      field: 'barricadeDevice',
      severity: 'warn',
      when: all(yes('isEgress'), yes('barricadeDevice')),
      says: 'A barricade device takes more than one motion to release and keeps responders out; a lock with one motion inside does the same job.',
    },
    {
      key: 'c',
      effect: 'signOff',
      grade: 'must',
      when: all(yes('isEgress'), yes('barricadeDevice')),
      says: 'A reviewer settles what becomes of the barricade device before this door is issued.',
    },
    {
      key: 'd',
      effect: 'signOff',
      grade: 'must',
      when: lockdown,
      of: { not: { release: ['free'] } },
      says: 'This is not a plain lock with one motion inside, so a reviewer signs for its use in a lockdown.',
    },
    {
      key: 'e',
      effect: 'caution',
      when: all(lockdown, any(yes('panicPresent'), yes('fireRated'))),
      says: 'Nothing may be added that voids the listing of the panic hardware, fire door hardware or closer; fire doors are altered only as NFPA 80 allows.',
    },
    {
      key: 'f',
      effect: 'permit',
      when: lockdown,
      of: { wired: true, release: ['free'] },
      says: 'Remote locking of all rooms is allowed as long as the inside lever always opens.',
    },
  ],
});
