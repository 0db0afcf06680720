import { under } from '../../codes/sections.ts';
import { all, is, no, not, yes } from '../../logic/condition.ts';
import { hospitalCorridorDoor } from '../health/conditions.ts';
import { defineRule } from '../rule.ts';

const boltedPair = all(
  yes('isPair'),
  is('roomUse', 'storage', 'equipment'),
  is('inactiveBolts', 'manualFlush'),
);

export const R111 = defineRule({
  id: 'R-111',
  title: 'Manual bolts at a storage or equipment room',
  family: 'rooms',
  book: 'ibc',
  cites: [under('boltLocks')],
  confidence: 'secondary',
  note: 'Rated pairs are judged by R-45, pairs on the corridor of a hospital by R-107.',
  why: 'The second leaf opens for goods, not for people.',
  clauses: [
    {
      key: 'a',
      effect: 'permit',
      when: all(boltedPair, no('fireRated'), no('inactiveHasHardware'), not(hospitalCorridorDoor)),
      says: 'Manual bolts may hold the inactive leaf of this unrated pair.',
    },
    {
      key: 'b',
      effect: 'modify',
      trade: 'locksmith',
      when: all(boltedPair, yes('inactiveHasHardware')),
      says: 'Remove any knob, lever or bar from the inactive leaf: with manual bolts it must not look like an exit.',
    },
  ],
});
