import { under } from '../../codes/sections.ts';
import { all, is, nfpa101, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

const lockdown = all(nfpa101(), is('roomUse', 'classroom', 'dayCare'), yes('wishLockdown'));

export const R153 = defineRule({
  id: 'R-153',
  title: 'Classroom and day-care locks under NFPA 101',
  family: 'uses',
  book: 'nfpa101',
  cites: [under('educationalLockingNfpa')],
  confidence: 'secondary',
  note: 'Unlocking from outside was read second-hand; the rest of the list is from general knowledge.',
  why: 'A room must be lockable against an intruder without trapping the class or keeping responders out.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: lockdown,
      items: ['lockFromInside', 'outsideUnlockKey', 'ahjApproval'],
      says: 'The lock is set from inside without opening the door, staff open it from outside by key or credential, and one motion at 34 to 48 in lets people out; the authority accepts it.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: lockdown,
      of: { not: { release: ['free'] } },
      says: 'Anything but a lock with free exit by one motion goes to a reviewer; remote locking is fine as long as the inside opens.',
    },
  ],
  cases: cases(
    [
      'room under NFPA 101',
      { roomUse: 'classroom', wishLockdown: true },
      'yes',
      { clause: 'a', basis: { nfpa101: 2021 }, does: ['lockFromInside', 'outsideUnlockKey', 'ahjApproval'] },
    ],
    [
      'room under NFPA 101',
      { roomUse: 'dayCare', wishLockdown: true },
      'yes',
      { clause: 'a', basis: { nfpa101: 2021 } },
    ],
    ['IBC alone', { roomUse: 'classroom', wishLockdown: true }, 'no', { clause: 'a' }],
    ['office', { roomUse: 'office', wishLockdown: true }, 'no', { clause: 'a', basis: { nfpa101: 2021 } }],
    [
      'no lockdown wanted',
      { roomUse: 'classroom', wishLockdown: false },
      'no',
      { clause: 'a', basis: { nfpa101: 2021 } },
    ],
    ['wish not known', { roomUse: 'classroom' }, 'unknown', { clause: 'a', basis: { nfpa101: 2021 } }],
    [
      'magnet',
      { roomUse: 'classroom', wishLockdown: true },
      'yes',
      { clause: 'b', on: 'magnet/safe/sensor', basis: { nfpa101: 2021 }, does: 'signOff must' },
    ],
    [
      'magnet',
      { roomUse: 'dayCare', wishLockdown: true },
      'yes',
      { clause: 'b', on: 'magnet/safe/sensor', basis: { nfpa101: 2021 } },
    ],
    [
      'lock with free exit',
      { roomUse: 'classroom', wishLockdown: true },
      'no',
      { clause: 'b', on: 'mortiseLock/secure/free', basis: { nfpa101: 2021 } },
    ],
    [
      'IBC alone',
      { roomUse: 'classroom', wishLockdown: true },
      'no',
      { clause: 'b', on: 'magnet/safe/sensor' },
    ],
    [
      'office',
      { roomUse: 'office', wishLockdown: true },
      'no',
      { clause: 'b', on: 'magnet/safe/sensor', basis: { nfpa101: 2021 } },
    ],
    [
      'no lockdown wanted',
      { roomUse: 'classroom', wishLockdown: false },
      'no',
      { clause: 'b', on: 'magnet/safe/sensor', basis: { nfpa101: 2021 } },
    ],
    [
      'wish not known',
      { roomUse: 'classroom' },
      'unknown',
      { clause: 'b', on: 'magnet/safe/sensor', basis: { nfpa101: 2021 } },
    ],
  ),
});
