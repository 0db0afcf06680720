import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const on = 'mortiseLock/secure/free';

export const R97Cases = cases(
  ['tenant entrance', { roomUse: 'suiteEntrance' }, 'yes', { clause: 'a', on, does: 'permit' }],
  ['storage room', { roomUse: 'storage' }, 'no', { clause: 'a', on }],
  ['room not known', {}, 'unknown', { clause: 'a', on }],
  ...onEach(
    ['magnet/safe/sensor', 'magnet/safe/none'],
    'no ordinary lock',
    { roomUse: 'suiteEntrance' },
    'no',
    'a',
  ),
  [
    'rated tenant entrance',
    { roomUse: 'suiteEntrance', fireRatingMin: 20 },
    'yes',
    { clause: 'b', does: 'caution' },
  ],
  [
    'unrated tenant entrance',
    { roomUse: 'suiteEntrance', fireRatingMin: 0, wallRatingMin: 0 },
    'no',
    { clause: 'b' },
  ],
  ['rated storage room', { roomUse: 'storage', fireRatingMin: 20 }, 'no', { clause: 'b' }],
  ['rating not known', { roomUse: 'suiteEntrance' }, 'unknown', { clause: 'b' }],
);
