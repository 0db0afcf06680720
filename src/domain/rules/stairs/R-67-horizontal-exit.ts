import { under } from '../../codes/sections.ts';
import { all, is, no, not, under as below, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

const door = { egressRole: 'horizontalExit' } as const;
const here = is('egressRole', 'horizontalExit');

export const R67 = defineRule({
  id: 'R-67',
  title: 'A horizontal exit is never locked against egress',
  family: 'stairs',
  book: 'ibc',
  cites: [under('horizontalExits'), under('doorSwing')],
  confidence: 'memory',
  note: 'In a fire wall of 3 or 4 hours the door needs 180 min. Closing and latching follow R-36 to R-38.',
  why: 'The other side of the wall is the refuge; where both sides may flee, neither may be locked.',
  clauses: [
    {
      key: 'a',
      effect: 'signOff',
      grade: 'must',
      when: here,
      says: 'A horizontal exit: a reviewer confirms rating, closing and latch, and which way people pass through it.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: all(here, is('exitDirection', 'both')),
      of: { not: { family: ['mechanical', 'detention'], release: ['free', 'attended'] } },
      says: 'This door is used for egress in both directions, so a lock on either side locks someone’s exit; a passage latch is all it may have.',
    },
    {
      key: 'c',
      effect: 'finding',
      field: 'fireRatingMin',
      severity: 'warn',
      when: all(here, below('fireRatingMin', 'horizontalExitDoorMin')),
      says: 'A door in a horizontal exit needs at least 90 min, and this one is entered with {fireRatingMin}.',
    },
    {
      key: 'd',
      effect: 'caution',
      when: all(here, no('swingsWithEgress'), not(is('doorType', 'doubleEgressPair'))),
      says: 'The leaf swings against egress: a horizontal exit swings with it, or is a double-egress pair.',
    },
    {
      key: 'e',
      effect: 'signOff',
      grade: 'must',
      when: all(
        here,
        yes('isSwinging'),
        is('exitDirection', 'both'),
        not(is('doorType', 'doubleEgressPair')),
      ),
      says: 'People pass this horizontal exit both ways, and its leaf swings with egress one way only: a reviewer asks for a double-egress pair or a second opening that swings the other way.',
    },
  ],
  cases: cases(
    ['horizontal exit', door, 'yes', { clause: 'a', does: 'signOff must' }],
    ['corridor door', { egressRole: 'exitAccess' }, 'no', { clause: 'a' }],
    ['role not known', {}, 'unknown', { clause: 'a' }],
    [
      'both ways, electrified lock',
      { ...door, exitDirection: 'both' },
      'yes',
      { clause: 'b', on: 'exitTrim/secure/free', does: 'prohibit' },
    ],
    [
      'both ways, key inside',
      { ...door, exitDirection: 'both' },
      'yes',
      { clause: 'b', on: 'mechanicalLock/none/keyInside' },
    ],
    [
      'both ways, passage latch',
      { ...door, exitDirection: 'both' },
      'no',
      { clause: 'b', on: 'mechanicalLock/none/free' },
    ],
    [
      'both ways, detention goes to its own rules',
      { ...door, exitDirection: 'both' },
      'no',
      { clause: 'b', on: 'detentionLock/none/attended' },
    ],
    [
      'one way only',
      { ...door, exitDirection: 'towardSecure' },
      'no',
      { clause: 'b', on: 'exitTrim/secure/free' },
    ],
    [
      'office door used both ways',
      { egressRole: 'exitAccess', exitDirection: 'both' },
      'no',
      { clause: 'b', on: 'exitTrim/secure/free' },
    ],
    ['direction not known', door, 'unknown', { clause: 'b', on: 'exitTrim/secure/free' }],
    ['60 min', { ...door, fireRatingMin: 60 }, 'yes', { clause: 'c', does: 'warn fireRatingMin' }],
    ['89 min', { ...door, fireRatingMin: 89 }, 'yes', { clause: 'c' }],
    ['90 min', { ...door, fireRatingMin: 90 }, 'no', { clause: 'c' }],
    ['corridor door of 20 min', { egressRole: 'exitAccess', fireRatingMin: 20 }, 'no', { clause: 'c' }],
    ['rating not known', door, 'unknown', { clause: 'c' }],
    [
      'swings against those who flee',
      { ...door, doorType: 'single', swingsWithEgress: false },
      'yes',
      { clause: 'd', does: 'caution' },
    ],
    ['swings with them', { ...door, doorType: 'single', swingsWithEgress: true }, 'no', { clause: 'd' }],
    [
      'pair of opposite leaves',
      { ...door, doorType: 'doubleEgressPair', swingsWithEgress: false },
      'no',
      { clause: 'd' },
    ],
    [
      'corridor door',
      { egressRole: 'exitAccess', doorType: 'single', swingsWithEgress: false },
      'no',
      { clause: 'd' },
    ],
    ['swing not surveyed', { ...door, doorType: 'single' }, 'unknown', { clause: 'd' }],
    [
      'single leaf, both ways',
      { ...door, doorType: 'single', exitDirection: 'both' },
      'yes',
      { clause: 'e', does: 'signOff must' },
    ],
    [
      'pair that swings one way, both ways',
      { ...door, doorType: 'pair', exitDirection: 'both' },
      'yes',
      { clause: 'e' },
    ],
    [
      'double-egress pair, both ways',
      { ...door, doorType: 'doubleEgressPair', exitDirection: 'both' },
      'no',
      { clause: 'e' },
    ],
    [
      'sliding door, both ways',
      { ...door, doorType: 'slidingAutomatic', exitDirection: 'both' },
      'no',
      { clause: 'e' },
    ],
    [
      'single leaf, one way',
      { ...door, doorType: 'single', exitDirection: 'towardSecure' },
      'no',
      { clause: 'e' },
    ],
    [
      'corridor door, both ways',
      { egressRole: 'exitAccess', doorType: 'single', exitDirection: 'both' },
      'no',
      { clause: 'e' },
    ],
    ['ways not surveyed', { egressRole: 'horizontalExit', doorType: 'single' }, 'unknown', { clause: 'e' }],
  ),
});
