import { under } from '../../codes/sections.ts';
import { all, is, no, over, under as below, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

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
  cases: cases(
    [
      'no sprinklers',
      {
        egressRole: 'exitAccess',
        doorType: 'turnstileSecurity',
        sprinklered: false,
        sprinklerKind: 'nfpa13',
      },
      'yes',
      { clause: 'a', does: 'prohibit' },
    ],
    [
      'sprinklered',
      { egressRole: 'exitAccess', doorType: 'turnstileSecurity', sprinklered: true, sprinklerKind: 'nfpa13' },
      'no',
      { clause: 'a' },
    ],
    [
      'waist-high turnstile',
      { egressRole: 'exitAccess', doorType: 'turnstile', sprinklered: false, sprinklerKind: 'nfpa13' },
      'no',
      { clause: 'a' },
    ],
    [
      'sealed off',
      { egressRole: 'sealedOff', doorType: 'turnstileSecurity', sprinklered: false, sprinklerKind: 'nfpa13' },
      'no',
      { clause: 'a' },
    ],
    [
      'sprinklers not surveyed',
      { egressRole: 'exitAccess', doorType: 'turnstileSecurity' },
      'unknown',
      { clause: 'a' },
    ],
    [
      'lobby barrier',
      { egressRole: 'exitAccess', doorType: 'turnstileSecurity' },
      'yes',
      {
        clause: 'b',
        does: [
          'pushToExit',
          'powerLossRelease',
          'fireAlarmRelease',
          'detectionRelease',
          'overrideReset',
          'accessibleLane',
        ],
      },
    ],
    [
      'lobby barrier',
      { egressRole: 'exitAccess', doorType: 'turnstileSecurity' },
      'yes',
      { clause: 'e', does: 'signOff must' },
    ],
    ['hinged door', { egressRole: 'exitAccess', doorType: 'single' }, 'no', { clause: 'b' }],
    ['hinged door', { egressRole: 'exitAccess', doorType: 'single' }, 'no', { clause: 'e' }],
    ['sealed off', { egressRole: 'sealedOff', doorType: 'turnstileSecurity' }, 'no', { clause: 'b' }],
    ['sealed off', { egressRole: 'sealedOff', doorType: 'turnstileSecurity' }, 'no', { clause: 'e' }],
    ['role not known', { doorType: 'turnstileSecurity' }, 'unknown', { clause: 'b' }],
    ['role not known', { doorType: 'turnstileSecurity' }, 'unknown', { clause: 'e' }],
    [
      'lane just under 22 in',
      { egressRole: 'exitAccess', doorType: 'turnstileSecurity', clearWidthIn: 21.9375 },
      'yes',
      { clause: 'c', does: 'modify doorSupplier' },
    ],
    [
      'lane of 22 in',
      { egressRole: 'exitAccess', doorType: 'turnstileSecurity', clearWidthIn: 22 },
      'no',
      { clause: 'c' },
    ],
    [
      'lane of 21 in',
      { egressRole: 'exitAccess', doorType: 'turnstileSecurity', clearWidthIn: 21 },
      'yes',
      { clause: 'c' },
    ],
    [
      'narrow hinged door',
      { egressRole: 'exitAccess', doorType: 'single', clearWidthIn: 21 },
      'no',
      { clause: 'c' },
    ],
    [
      'sealed off',
      { egressRole: 'sealedOff', doorType: 'turnstileSecurity', clearWidthIn: 21 },
      'no',
      { clause: 'c' },
    ],
    [
      'lane not measured',
      { egressRole: 'exitAccess', doorType: 'turnstileSecurity' },
      'unknown',
      { clause: 'c' },
    ],
    [
      'lane just under 32 in for 51',
      { egressRole: 'exitAccess', doorType: 'turnstileSecurity', clearWidthIn: 31.9375, occupantLoad: 51 },
      'yes',
      { clause: 'd', does: 'caution' },
    ],
    [
      'lane of 32 in for 51',
      { egressRole: 'exitAccess', doorType: 'turnstileSecurity', clearWidthIn: 32, occupantLoad: 51 },
      'no',
      { clause: 'd' },
    ],
    [
      'lane of 31 in for 50',
      { egressRole: 'exitAccess', doorType: 'turnstileSecurity', clearWidthIn: 31, occupantLoad: 50 },
      'no',
      { clause: 'd' },
    ],
    [
      'narrow hinged door',
      { egressRole: 'exitAccess', doorType: 'single', clearWidthIn: 31.9375, occupantLoad: 51 },
      'no',
      { clause: 'd' },
    ],
    [
      'sealed off',
      { egressRole: 'sealedOff', doorType: 'turnstileSecurity', clearWidthIn: 31.9375, occupantLoad: 51 },
      'no',
      { clause: 'd' },
    ],
    [
      'load not known',
      { egressRole: 'exitAccess', doorType: 'turnstileSecurity', clearWidthIn: 31 },
      'unknown',
      { clause: 'd' },
    ],
  ),
});
