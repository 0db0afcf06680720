import { under } from '../../codes/sections.ts';
import { lockWithoutBarOnLeaf } from '../../arrangement/leafLocks.ts';
import { all, any, atLeast, ibc, is, no, not, yes } from '../../logic/condition.ts';
import { panicSpaces, panicTriggers } from '../../logic/derived.ts';
import { assemblyMainDoorIbc, exteriorSpaceKeyLock } from '../foundations/keyLocks.ts';
import { defineRule } from '../rule.ts';
import { besideALeverLock, keyInside, latchNeedsBar, lockWithoutBar, notKeyInside } from './panicCases.ts';

const space = panicSpaces.ibcAssemblyOrEducation;
const trigger = panicTriggers.ibcAssemblyOrEducation;

export const R69 = defineRule({
  id: 'R-69',
  title: 'Panic hardware for assembly and educational spaces of 50 or more',
  family: 'panic',
  book: 'ibc',
  cites: [under('panicHardware'), under('locksAndLatches'), under('hardwareRelease'), under('gates')],
  confidence: 'read',
  note: 'That courtrooms and lecture halls are listed under Group A-3 is from general knowledge; a classroom beyond the twelfth grade may be business, so it is signed for and not decided. How far along the path the duty runs is disputed; here every door in the path carries it. A lock added to a push/pull leaf counts as a lock. Stadium gates: see R-142.',
  why: 'A crowd pressing on a door must open it with its weight; a lever behind a crush cannot be turned.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      items: ['panicHardware'],
      when: all(space, no('hasExitDevice')),
      of: notKeyInside,
      says: 'This door serves {occupantLoad} in an assembly or educational space, so it needs panic hardware.',
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
      says: 'The door serves {occupantLoad} in an assembly or educational space; only panic hardware may latch or lock it, and this device is not operated by a bar.',
    },
    {
      key: 'd',
      effect: 'prohibit',
      when: all(space, no('hasExitDevice')),
      of: latchNeedsBar,
      says: 'The door serves {occupantLoad} in an assembly or educational space and has no push bar; a lever latch is not enough for a crowd.',
    },
    {
      key: 'e',
      effect: 'prohibit',
      when: all(space, not(any(assemblyMainDoorIbc, exteriorSpaceKeyLock))),
      of: keyInside,
      says: 'A key lock may replace panic hardware only at the main door of a small assembly space, or toward a terrace whose egress leads back inside; this door is neither.',
    },
    {
      key: 'f',
      effect: 'signOff',
      grade: 'note',
      when: all(trigger, not(is('egressRole', 'exitAccess'))),
      of: notKeyInside,
      says: 'Panic hardware is required here as on every door along the path; some authorities stop at the room door, and only a reviewer may relax it.',
    },
    {
      key: 'g',
      effect: 'signOff',
      grade: 'must',
      when: all(
        ibc(),
        is('doorType', 'gateSwing'),
        is('occupancyGroup', 'A-4', 'A-5'),
        yes('safeDispersalArea'),
        yes('gateSupervised'),
        atLeast('occupantLoad', 'panicLoadIbc'),
      ),
      says: 'This stadium gate goes without panic hardware only because it is under constant supervision and there is a safe dispersal area inside the fence; a reviewer confirms both.',
    },
    {
      key: 'h',
      effect: 'signOff',
      grade: 'must',
      when: all(
        ibc(),
        yes('isEgress'),
        is('roomUse', 'conference', 'courtroom', 'classroom'),
        not(any(yes('groupA'), yes('groupE'), yes('groupH'))),
        atLeast('occupantLoad', 'panicLoadIbc'),
      ),
      says: 'A meeting room, courtroom or lecture room for {occupantLoad} is an assembly space by its use, though another group is entered; check the group, because panic hardware depends on it.',
    },
    {
      key: 'i',
      effect: 'prohibit',
      when: all(space, no('hasExitDevice'), lockWithoutBarOnLeaf),
      of: besideALeverLock,
      says: 'The lever lock or bolt would stay on a door for a crowd, and only a push bar may latch it; install the bar first, then use a strike, trim or latch retraction at the bar.',
    },
  ],
});
