import { text, under } from '../../codes/sections.ts';
import { all, nfpa101, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R85 = defineRule({
  id: 'R-85',
  title: 'Delayed egress is a complete set',
  family: 'special',
  book: 'ibc',
  cites: [
    under('delayedEgress'),
    under('delayedEgressNfpa'),
    text('bhma', 'A156.24', 'Delayed-egress locks'),
  ],
  confidence: 'read',
  note: 'That a manual fire alarm box need not cancel the delay was read second-hand. Older text sets 15 lbf for at most 3 s to start the delay, newer IBC text names no force; 15 lbf is the safe setting.',
  why: 'A delay is allowed only while every means of ending it works.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: yes('isEgress'),
      of: { release: ['delayed'] },
      items: [
        'delaySounder',
        'delayOverride',
        'detectionRelease',
        'powerLossRelease',
        'emergencyLighting',
        'overrideReset',
        'listedLock',
      ],
      says: 'Pushing for at most 3 s with no more than 15 lbf sounds an alarm and starts a delay of 15 s that nothing can stop; sprinklers, automatic detection, loss of lock power and a switch end it at once, and it is armed again by hand only.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: yes('isEgress'),
      of: { release: ['delayed'] },
      says: 'Delayed egress holds people for a while, so a life-safety reviewer signs for the whole arrangement.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: all(nfpa101(), yes('isEgress')),
      of: { release: ['delayed'] },
      says: 'NFPA 101 allows a delay only for low or ordinary hazard contents and where the chapter of this use says so.',
    },
  ],
});
