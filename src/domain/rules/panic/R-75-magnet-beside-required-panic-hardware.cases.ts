import { oneOfEachMagnet } from '../magnets/given.ts';
import { onEach } from '../onEach.ts';
import { doing } from '../doing.ts';
import { cases } from '../rule.ts';

const hall = {
  egressRole: 'exitAccess',
  doorType: 'single',
  latch: 'rimExit',
  occupancyGroup: 'A-3',
  occupantLoad: 50,
} as const;

export const R75Cases = cases(
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
);
