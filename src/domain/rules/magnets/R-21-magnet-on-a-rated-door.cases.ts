import { onEach } from '../onEach.ts';
import { doing } from '../doing.ts';
import { cases } from '../rule.ts';
import { oneOfEachMagnet } from './given.ts';

const rest = ['boltMotor/safe/sensor', 'mortiseLock/safe/free', 'delayedExitDevice/safe/delayed'];

export const R21Cases = cases(
  ...doing(
    { a: ['passiveLatch', 'closer', 'fireLabelledHardware'], b: 'signOff must' },
    ['a', 'b'].flatMap((clause) => [
      ...onEach(oneOfEachMagnet, '20 min door', { fireRatingMin: 20 }, 'yes' as const, clause),
      ...onEach(
        ['magnet/safe/sensor'],
        'unrated door in an unrated wall',
        { fireRatingMin: 0, wallRatingMin: 0 },
        'no' as const,
        clause,
      ),
      ...onEach(['magnet/safe/sensor'], 'rating not known', {}, 'unknown' as const, clause),
      ...onEach(rest, 'no magnet', { fireRatingMin: 90 }, 'no' as const, clause),
    ]),
  ),
);
