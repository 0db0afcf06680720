import { under } from '../../codes/sections.ts';
import { all, is, no, not, under as below, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

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
});
