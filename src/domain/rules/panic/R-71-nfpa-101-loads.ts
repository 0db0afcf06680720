import { text, under } from '../../codes/sections.ts';
import { lockWithoutBarOnLeaf } from '../../arrangement/leafLocks.ts';
import { all, no, not, yes } from '../../logic/condition.ts';
import { panicSpaces } from '../../logic/derived.ts';
import { assemblyMainDoorNfpa } from '../foundations/keyLocks.ts';
import { defineRule } from '../rule.ts';
import { besideALeverLock, keyInside, latchNeedsBar, lockWithoutBar, notKeyInside } from './panicCases.ts';

const space = panicSpaces.nfpaLoads;

export const R71 = defineRule({
  id: 'R-71',
  title: 'Panic hardware by the loads of NFPA 101',
  family: 'panic',
  book: 'nfpa101',
  cites: [
    under('panicHardwareNfpa'),
    under('assemblyKeyLockNfpa'),
    text('nfpa101', '7.11', 'High-hazard contents'),
  ],
  confidence: 'secondary',
  note: 'Where the IBC stands beside it, its lower load governs through R-69. A surveyed Group H is read as high hazard. The main-entrance key lock up to 500 people is from general knowledge (R-154); it excuses a key lock, never a latch.',
  why: 'The same crowd with a different threshold: from 100 people a lever is no longer enough.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      items: ['panicHardware'],
      when: all(space, no('hasExitDevice')),
      of: notKeyInside,
      says: 'Under NFPA 101 a door that serves {occupantLoad} in this use needs panic hardware.',
    },
    {
      key: 'b',
      effect: 'require',
      items: ['fireExitHardware'],
      when: all(space, no('hasExitDevice'), yes('fireRated')),
      of: notKeyInside,
      says: 'It is also a fire door, so its panic hardware carries the fire exit hardware label.',
    },
    {
      key: 'c',
      effect: 'prohibit',
      when: space,
      of: lockWithoutBar,
      says: 'Under NFPA 101 only panic hardware may latch or lock a door that serves {occupantLoad} in this use, and no bar operates this device.',
    },
    {
      key: 'd',
      effect: 'prohibit',
      when: all(space, no('hasExitDevice')),
      of: latchNeedsBar,
      says: 'Under NFPA 101 a door that serves {occupantLoad} in this use needs a push bar, and there is none; a lever latch is not enough.',
    },
    {
      key: 'e',
      effect: 'prohibit',
      when: all(space, not(assemblyMainDoorNfpa)),
      of: keyInside,
      says: 'Under NFPA 101 a key lock may replace panic hardware only at the main entrance of an assembly space up to 500 people.',
    },
    {
      key: 'f',
      effect: 'prohibit',
      when: all(space, no('hasExitDevice'), lockWithoutBarOnLeaf),
      of: besideALeverLock,
      says: 'The lever lock or bolt would stay on a door for a crowd, and only a push bar may latch it; install the bar first, then use a strike, trim or latch retraction at the bar.',
    },
  ],
});
