import { text } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

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
});
