import { under } from '../../codes/sections.ts';
import { all, is, no, over, under as below, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const barrier = all(yes('isEgress'), is('doorType', 'turnstileSecurity'));

export const R137 = defineRule({
  id: 'R-137',
  title: 'Security turnstile with powered barrier',
  family: 'doors',
  book: 'ibc',
  cites: [under('turnstiles')],
  confidence: 'memory',
  note: 'That the clause came with the 2018 edition was read second-hand; its conditions are from general knowledge. Without sprinklers it is refused on the safe side.',
  why: 'A powered barrier stops people in a means of egress, so it needs every release that a lock preventing egress needs.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(barrier, no('fullSprinklers')),
      says: 'A powered barrier is allowed in a means of egress only where the building is sprinklered throughout.',
    },
    {
      key: 'b',
      effect: 'require',
      when: barrier,
      items: [
        'pushToExit',
        'powerLossRelease',
        'fireAlarmRelease',
        'detectionRelease',
        'overrideReset',
        'accessibleLane',
      ],
      says: 'The barrier opens on loss of power, on a manual release that cuts its power for at least 30 s, and on fire alarm, sprinkler or detection until reset; an accessible lane or door stands beside it.',
    },
    {
      key: 'c',
      effect: 'modify',
      trade: 'doorSupplier',
      when: all(barrier, below('clearWidthIn', 'securityLaneIn')),
      says: 'The lane is {clearWidthIn} wide and needs 22 in.',
    },
    {
      key: 'd',
      effect: 'caution',
      when: all(
        barrier,
        below('clearWidthIn', 'securityLaneByWidthIn'),
        over('occupantLoad', 'turnstileLoad'),
      ),
      says: 'A lane narrower than 32 in counts for 50 people at most; {occupantLoad} need other exits.',
    },
    {
      key: 'e',
      effect: 'signOff',
      grade: 'must',
      when: barrier,
      says: 'A reviewer confirms the barrier, its releases and the occupant load it counts for.',
    },
  ],
});
