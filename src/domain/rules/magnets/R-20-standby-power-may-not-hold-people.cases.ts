import { onEach } from '../onEach.ts';
import { doing } from '../doing.ts';
import { cases } from '../rule.ts';
import { oneOfEachMagnet } from './given.ts';

const room = { egressRole: 'exitAccess' } as const;

const rest = ['boltMotor/safe/sensor', 'mortiseLock/safe/free', 'delayedExitDevice/safe/delayed'];

export const R20Cases = cases(
  ...doing(
    { a: ['powerLossRelease'], b: 'caution' },
    ['a', 'b'].flatMap((clause) => [
      ...onEach(oneOfEachMagnet, 'room door', room, 'yes' as const, clause),
      ...onEach(['magnet/safe/sensor'], 'cabinet', { egressRole: 'noOccupiedSpace' }, 'no' as const, clause),
      ...onEach(['magnet/safe/sensor'], 'role not known', {}, 'unknown' as const, clause),
      ...onEach(rest, 'no magnet', room, 'no' as const, clause),
    ]),
  ),
);
