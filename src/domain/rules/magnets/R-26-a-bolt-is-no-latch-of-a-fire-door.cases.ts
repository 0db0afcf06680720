import { onEach } from '../onEach.ts';
import { cases, type CaseRow } from '../rule.ts';

const rated = { fireRatingMin: 45, latch: 'pushPull' } as const;

const on = 'boltMotor/safe/sensor';

export const R26Cases = cases(
  ...onEach(
    ['boltMotor/safe/sensor', 'boltSolenoid/secure/none', 'glassPatchLock/safe/doorSwitch'],
    'push/pull fire door',
    rated,
    'yes',
  ),
  ...(['roller', 'deadboltOnly', 'hookbolt', 'patch'] as const).map(
    (latch): CaseRow => [`latch ${latch}`, { ...rated, latch }, 'yes', { on, does: 'prohibit' }],
  ),
  ['spring latch stays on the leaf', { ...rated, latch: 'mortise' }, 'no', { on }],
  ['unrated', { ...rated, fireRatingMin: 0, wallRatingMin: 0 }, 'no', { on }],
  ['latch not known', { fireRatingMin: 45 }, 'unknown', { on }],
  ...onEach(['magnet/safe/sensor', 'mortiseLock/secure/free'], 'no bolt', rated, 'no'),
);
