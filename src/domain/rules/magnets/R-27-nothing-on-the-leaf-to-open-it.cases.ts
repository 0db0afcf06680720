import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const leaf = { egressRole: 'exitAccess', latch: 'pushPull' } as const;

const around = (clause: string, on: string) => [
  ...onEach([on], 'roller latch', { ...leaf, latch: 'roller' }, 'yes' as const, clause),
  ...onEach([on], 'leaf with a lever', { ...leaf, latch: 'mortise' }, 'no' as const, clause),
  ...onEach([on], 'cabinet', { ...leaf, egressRole: 'noOccupiedSpace' }, 'no' as const, clause),
  ...onEach([on], 'latch not known', { egressRole: 'exitAccess' }, 'unknown' as const, clause),
];

export const R27Cases = cases(
  ...onEach(
    ['boltMotor/secure/sensor', 'strikeMortise/secure/free', 'strikeRim/secure/none'],
    'push/pull leaf',
    leaf,
    'yes',
    { clause: 'a', does: 'prohibit' },
  ),
  ...onEach(
    ['boltMotor/safe/sensor', 'strikeMortise/safe/free', 'mortiseLock/secure/free'],
    'not meant',
    leaf,
    'no',
    'a',
  ),
  ...around('a', 'boltMotor/secure/sensor'),
  ...onEach(['strikeMortise/safe/free', 'strikeRim/safe/none'], 'push/pull leaf', leaf, 'yes', {
    clause: 'b',
    does: 'prohibit',
  }),
  ...onEach(
    ['strikeMortise/secure/free', 'boltMotor/safe/sensor', 'magnet/safe/sensor'],
    'not meant',
    leaf,
    'no',
    'b',
  ),
  ...around('b', 'strikeMortise/safe/free'),
);
