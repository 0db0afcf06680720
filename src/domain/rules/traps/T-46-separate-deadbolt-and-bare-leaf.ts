import { text } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

export const T46 = defineRule({
  id: 'T-46',
  title: 'A separate deadbolt, and a leaf without a latch',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'practice',
  why: 'A strike or a magnet does not release a separate bolt, and a push/pull leaf gives a strike nothing to hold.',
  clauses: [
    {
      key: 'a',
      effect: 'modify',
      trade: 'locksmith',
      when: is('latch', 'boredPlusDeadbolt'),
      of: {
        device: [
          'strikeMortise',
          'strikeCylindrical',
          'strikeRim',
          'magnet',
          'shearMagnet',
          'delayedMagnet',
          'cylindricalLock',
          'batteryLock',
        ],
      },
      says: 'The separate deadbolt stays thrown: take it out of service, or install an interconnected lock that retracts latch and bolt in one motion.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: is('latch', 'pushPull', 'roller'),
      of: { family: ['strike'] },
      says: 'There is no latch on the leaf for a strike to hold.',
    },
  ],
  cases: cases(
    ...onEach(
      [
        'strikeMortise/secure/free',
        'strikeCylindrical/secure/free',
        'strikeRim/secure/free',
        'magnet/safe/sensor',
        'shearMagnet/safe/sensor',
        'delayedMagnet/safe/delayed',
        'cylindricalLock/secure/free',
        'batteryLock/asIs/free',
      ],
      'bored latch and deadbolt',
      { latch: 'boredPlusDeadbolt' },
      'yes',
      { clause: 'a', does: 'modify locksmith' },
    ),
    ['bored latch alone', { latch: 'bored' }, 'no', { clause: 'a', on: 'strikeCylindrical/secure/free' }],
    ['latch not surveyed', {}, 'unknown', { clause: 'a', on: 'strikeCylindrical/secure/free' }],
    [
      'a mortise lock takes the place of both',
      { latch: 'boredPlusDeadbolt' },
      'no',
      { clause: 'a', on: 'mortiseLock/secure/free' },
    ],
    ...onEach(
      ['strikeMortise/secure/free', 'strikeRim/safe/free'],
      'push/pull leaf',
      { latch: 'pushPull' },
      'yes',
      'b',
    ),
    [
      'roller latch',
      { latch: 'roller' },
      'yes',
      { clause: 'b', on: 'strikeMortise/secure/free', does: 'prohibit' },
    ],
    ['mortise latch', { latch: 'mortise' }, 'no', { clause: 'b', on: 'strikeMortise/secure/free' }],
    ['not surveyed', {}, 'unknown', { clause: 'b', on: 'strikeMortise/secure/free' }],
    ['a magnet needs no latch', { latch: 'pushPull' }, 'no', { clause: 'b', on: 'magnet/safe/sensor' }],
  ),
});
