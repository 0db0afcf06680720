import { under } from '../../codes/sections.ts';
import { all, is, nfpa101, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

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
});
