import { under as cite } from '../../codes/sections.ts';
import { all, any, is, no, not, under, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const boltedPair = all(
  yes('isPair'),
  is('occupancyGroup', 'B', 'F-1', 'F-2', 'S-1', 'S-2'),
  is('inactiveBolts', 'manualFlush'),
  not(is('roomUse', 'storage', 'equipment')),
);
const boltsAccepted = any(
  under('occupantLoad', 'manualBoltLoadIbc'),
  all(yes('fullSprinklers'), no('inactiveNeededForCapacity')),
);

export const R112 = defineRule({
  id: 'R-112',
  title: 'Business, factory or storage pair with manual bolts',
  family: 'rooms',
  book: 'ibc',
  cites: [cite('boltLocks')],
  confidence: 'secondary',
  note: 'Right for 2018 and 2021; the table of 2024 was not seen and may add mercantile.',
  why: 'A leaf held by manual bolts is not an exit, so it is allowed only where no one needs it.',
  clauses: [
    {
      key: 'a',
      effect: 'permit',
      when: all(boltedPair, boltsAccepted, no('fireRated'), no('inactiveHasHardware')),
      says: 'Manual bolts may hold the inactive leaf here: the load is under 50, or the building is sprinklered and the leaf is not needed for width.',
    },
    {
      key: 'b',
      effect: 'modify',
      trade: 'locksmith',
      when: all(boltedPair, yes('inactiveHasHardware')),
      says: 'Remove any knob, lever or bar from the inactive leaf: with manual bolts it must not look like an exit.',
    },
    {
      key: 'd',
      effect: 'require',
      when: all(yes('isEgress'), boltedPair, not(boltsAccepted)),
      items: ['automaticFlushBolts'],
      says: 'Automatic or constant-latching bolts replace the manual ones; people may need this leaf.',
    },
  ],
});
