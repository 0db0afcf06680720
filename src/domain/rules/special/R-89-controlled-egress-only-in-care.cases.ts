import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const on = 'mortiseLock/safe/controlled';

const free = 'mortiseLock/safe/free';

const alone = { ibc: null, nfpa101: 2021 } as const;

export const R89Cases = cases(
  ['office', { occupancyGroup: 'B' }, 'yes', { clause: 'a', on, does: 'prohibit' }],
  ['prison has rules of its own', { occupancyGroup: 'I-3' }, 'yes', { clause: 'a', on }],
  ['assisted living', { occupancyGroup: 'I-1.1' }, 'no', { clause: 'a', on }],
  ['assisted living, condition 2', { occupancyGroup: 'I-1.2' }, 'no', { clause: 'a', on }],
  ['hospital', { occupancyGroup: 'I-2' }, 'no', { clause: 'a', on }],
  ['group not known', {}, 'unknown', { clause: 'a', on }],
  ['office, NFPA 101 alone', { occupancyGroup: 'B' }, 'no', { clause: 'a', on, basis: alone }],
  ['office, both books', { occupancyGroup: 'B' }, 'yes', { clause: 'a', on, basis: { nfpa101: 2021 } }],
  ['office, no book', { occupancyGroup: 'B' }, 'yes', { clause: 'a', on, basis: { ibc: null } }],
  ['a free lever in an office', { occupancyGroup: 'B' }, 'no', { clause: 'a', on: free }],
  [
    'hotel, NFPA 101 alone',
    { occupancyGroup: 'R-1' },
    'yes',
    { clause: 'b', on, basis: alone, does: 'prohibit' },
  ],
  ['hotel, both books', { occupancyGroup: 'R-1' }, 'no', { clause: 'b', on, basis: { nfpa101: 2021 } }],
  ['hotel, no book', { occupancyGroup: 'R-1' }, 'no', { clause: 'b', on, basis: { ibc: null } }],
  ['ambulatory care, NFPA 101 alone', { occupancyGroup: 'B' }, 'no', { clause: 'b', on, basis: alone }],
  ['board and care, NFPA 101 alone', { occupancyGroup: 'R-4' }, 'no', { clause: 'b', on, basis: alone }],
  ['assisted living, NFPA 101 alone', { occupancyGroup: 'I-1.1' }, 'no', { clause: 'b', on, basis: alone }],
  ['limited care, NFPA 101 alone', { occupancyGroup: 'I-1.2' }, 'no', { clause: 'b', on, basis: alone }],
  ['hospital, NFPA 101 alone', { occupancyGroup: 'I-2' }, 'no', { clause: 'b', on, basis: alone }],
  ['group not known', {}, 'unknown', { clause: 'b', on, basis: alone }],
  ['a free lever in a hotel', { occupancyGroup: 'R-1' }, 'no', { clause: 'b', on: free, basis: alone }],
  [
    'board and care, NFPA 101 alone',
    { occupancyGroup: 'R-4' },
    'yes',
    { clause: 'c', on, basis: alone, does: 'signOff must' },
  ],
  ['ambulatory care, NFPA 101 alone', { occupancyGroup: 'B' }, 'yes', { clause: 'c', on, basis: alone }],
  ['hospital, NFPA 101 alone', { occupancyGroup: 'I-2' }, 'no', { clause: 'c', on, basis: alone }],
  [
    'board and care, both books',
    { occupancyGroup: 'R-4' },
    'no',
    { clause: 'c', on, basis: { nfpa101: 2021 } },
  ],
  ['board and care, no book', { occupancyGroup: 'R-4' }, 'no', { clause: 'c', on, basis: { ibc: null } }],
  ['group not known', {}, 'unknown', { clause: 'c', on, basis: alone }],
  ['a free lever', { occupancyGroup: 'R-4' }, 'no', { clause: 'c', on: free, basis: alone }],
  ...onEach(
    ['magnet/safe/controlled', 'boltMotor/safe/controlled'],
    'office',
    { occupancyGroup: 'B' },
    'yes',
    'a',
  ),
);
