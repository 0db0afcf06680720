import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

export const T35Cases = cases(
  ...onEach(['mortiseLock/secure/free', 'exitTrim/secure/free'], 'butt hinges', { hinges: 'butt' }, 'yes', {
    does: 'caution',
  }),
  ['pivots', { hinges: 'pivot' }, 'no', { on: 'mortiseLock/secure/free' }],
  ['hanging not surveyed', {}, 'unknown', { on: 'mortiseLock/secure/free' }],
  ['a strike needs no transfer', { hinges: 'butt' }, 'no', { on: 'strikeMortise/secure/free' }],
);
