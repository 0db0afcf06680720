import { under } from '../../codes/sections.ts';
import { all, no, yes } from '../../logic/condition.ts';
import { panicSpaces } from '../../logic/derived.ts';
import { defineRule } from '../rule.ts';
import { anyLock, anyLockWithoutBar, keyInside, latchNeedsBar } from './panicCases.ts';

const space = panicSpaces.ibcHighHazard;

export const R70 = defineRule({
  id: 'R-70',
  title: 'Panic hardware in high hazard, whatever the load',
  family: 'panic',
  book: 'ibc',
  cites: [under('panicHardware')],
  confidence: 'read',
  note: 'That a reviewer reads every door of this group is policy of this schedule. The cases that let a magnet stand beside the bar name Groups A and E only, so none is open here.',
  why: 'A flash fire leaves no time for a lever, even for one person in the room.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      items: ['panicHardware'],
      when: all(space, no('hasExitDevice')),
      of: anyLock,
      says: 'This is a high-hazard space, so its door needs panic hardware even for one person.',
    },
    {
      key: 'b',
      effect: 'require',
      items: ['fireExitHardware'],
      when: all(space, no('hasExitDevice'), yes('fireRated')),
      of: anyLock,
      says: 'It is also a fire door, so its panic hardware carries the fire exit hardware label.',
    },
    {
      key: 'c',
      effect: 'prohibit',
      when: space,
      of: anyLockWithoutBar,
      says: 'In a high-hazard space only panic hardware may hold the door, and this lock is not part of a push bar.',
    },
    {
      key: 'd',
      effect: 'prohibit',
      when: all(space, no('hasExitDevice')),
      of: latchNeedsBar,
      says: 'The door of a high-hazard space has no push bar; a lever latch is not enough there.',
    },
    {
      key: 'e',
      effect: 'prohibit',
      when: space,
      of: keyInside,
      says: 'A keyed exit is not allowed in a high-hazard space.',
    },
    {
      key: 'f',
      effect: 'signOff',
      grade: 'must',
      when: all(yes('isEgress'), yes('groupH')),
      says: 'People leave a high-hazard space by this door: a reviewer reviews the whole opening, whatever is chosen.',
    },
    {
      key: 'g',
      effect: 'signOff',
      grade: 'must',
      when: all(yes('isEgress'), no('groupH'), yes('planHighHazardLeaves')),
      says: 'People of a high-hazard room can leave only through this one. A door that serves a high-hazard room needs panic hardware even for one person: a reviewer says whether this door does.',
    },
  ],
});
