import { under } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { magnetDevices, oneOfEachMagnet } from '../magnets/magnets.ts';
import { onEach } from '../onEach.ts';
import { doing } from '../doing.ts';
import { cases, defineRule } from '../rule.ts';

const hall = {
  egressRole: 'exitAccess',
  doorType: 'single',
  latch: 'rimExit',
  occupancyGroup: 'A-3',
  occupantLoad: 50,
} as const;

export const R75 = defineRule({
  id: 'R-75',
  title: 'A magnet beside required panic hardware goes to the reviewer',
  family: 'panic',
  book: 'ibc',
  cites: [under('panicHardware'), under('hardwareRelease')],
  confidence: 'secondary',
  why: 'With a magnet, one electric switch is all that stands between a crowd and a locked door.',
  clauses: [
    {
      key: 'a',
      effect: 'signOff',
      grade: 'must',
      when: yes('panicWithLock'),
      of: { device: magnetDevices },
      says: 'A magnet holds a door that needs panic hardware; a reviewer must accept how the bar releases it.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: yes('panicWithLock'),
      of: { device: magnetDevices },
      says: 'Electrified trim, latch retraction or a strike behind the bar do the same job, and the bar opens the door by itself.',
    },
  ],
  cases: cases(
    ...doing(
      { a: 'signOff must', b: 'caution' },
      ['a', 'b'].flatMap((clause) => [
        ...onEach(oneOfEachMagnet, 'hall for 50', hall, 'yes' as const, clause),
        ...onEach(
          ['exitTrim/secure/free', 'boltMotor/safe/doorSwitch', 'delayedExitDevice/safe/delayed'],
          'no magnet',
          hall,
          'no' as const,
          clause,
        ),
        ...onEach(
          ['magnet/safe/doorSwitch'],
          'office for 49',
          { ...hall, occupancyGroup: 'B', roomUse: 'office', occupantLoad: 49 },
          'no' as const,
          clause,
        ),
        ...onEach(
          ['magnet/safe/doorSwitch'],
          'load not known',
          { egressRole: 'exitAccess', doorType: 'single', latch: 'rimExit', occupancyGroup: 'A-3' },
          'unknown' as const,
          clause,
        ),
      ]),
    ),
  ),
});
