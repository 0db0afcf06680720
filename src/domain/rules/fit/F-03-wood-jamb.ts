import { text } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

export const F03 = defineRule({
  id: 'F-03',
  title: 'A wood jamb limits strength',
  family: 'fit',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'practice',
  why: 'The jamb splits long before a strike or a latch gives way.',
  clauses: [
    {
      key: 'a',
      effect: 'caution',
      when: is('frameMaterial', 'wood'),
      of: { family: ['strike'] },
      says: 'The wood jamb sets the strength: use a long face plate and screws of 3 in into the stud.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: all(is('frameMaterial', 'wood'), is('securityNeed', 'high', 'critical')),
      says: 'High security is asked of a wood jamb, which holds about 300 to 800 lbf whatever device is chosen: change the frame or lower the security need.',
    },
  ],
  cases: cases(
    ...onEach(
      ['strikeMortise/secure/free', 'strikeCylindrical/secure/free', 'strikeRim/secure/free'],
      'wood jamb',
      { frameMaterial: 'wood' },
      'yes',
      { clause: 'a', does: 'caution' },
    ),
    [
      'a magnet is not screwed to the strike jamb',
      { frameMaterial: 'wood' },
      'no',
      { clause: 'a', on: 'magnet/safe/sensor' },
    ],
    [
      'steel frame',
      { frameMaterial: 'hollowMetal' },
      'no',
      { clause: 'a', on: 'strikeCylindrical/secure/free' },
    ],
    ['frame not surveyed', {}, 'unknown', { clause: 'a', on: 'strikeCylindrical/secure/free' }],
    ['high need', { frameMaterial: 'wood', securityNeed: 'high' }, 'yes', { clause: 'b', does: 'caution' }],
    ['critical need', { frameMaterial: 'wood', securityNeed: 'critical' }, 'yes', { clause: 'b' }],
    ['medium need', { frameMaterial: 'wood', securityNeed: 'medium' }, 'no', { clause: 'b' }],
    ['high need, steel frame', { frameMaterial: 'hollowMetal', securityNeed: 'high' }, 'no', { clause: 'b' }],
    ['need not stated', { frameMaterial: 'wood' }, 'unknown', { clause: 'b' }],
  ),
});
