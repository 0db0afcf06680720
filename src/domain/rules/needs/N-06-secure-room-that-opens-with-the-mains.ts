import { text } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const N06 = defineRule({
  id: 'N-06',
  title: 'A secure room that unlocks when power fails',
  family: 'needs',
  book: 'practice',
  cites: [text('practice', '', 'Choice of fail mode')],
  confidence: 'practice',
  why: 'Fail safe belongs where people’s safety needs it; elsewhere it opens the room to anyone who waits for the battery to run out.',
  clauses: [
    {
      effect: 'caution',
      when: is('securityNeed', 'high', 'critical'),
      of: { failMode: ['safe'] },
      says: 'The security need is {securityNeed}, and this opening unlocks once lock power and battery are gone.',
    },
  ],
  cases: cases(
    [
      'critical room, magnet',
      { securityNeed: 'critical' },
      'yes',
      { on: 'magnet/safe/sensor', does: 'caution' },
    ],
    ['high need, fail-safe lock', { securityNeed: 'high' }, 'yes', { on: 'mortiseLock/safe/free' }],
    ['medium need', { securityNeed: 'medium' }, 'no', { on: 'magnet/safe/sensor' }],
    ['fail secure stays locked', { securityNeed: 'critical' }, 'no', { on: 'mortiseLock/secure/free' }],
    ['need not known', {}, 'unknown', { on: 'magnet/safe/sensor' }],
  ),
});
