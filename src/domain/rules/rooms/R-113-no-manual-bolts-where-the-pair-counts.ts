import { under } from '../../codes/sections.ts';
import { all, ibc, is, no, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const boltedPair = all(
  yes('isEgress'),
  yes('isPair'),
  is('inactiveBolts', 'manualFlush'),
  not(is('roomUse', 'storage', 'equipment')),
);
/** The list of the code names business, factory and storage pairs, and doors inside a unit nobody needs. */
const notListed = not(is('occupancyGroup', 'B', 'F-1', 'F-2', 'S-1', 'S-2'));
const mercantile2024 = all(
  ibc({ from: 2024, readTo: 2024 }),
  is('occupancyGroup', 'M'),
  no('inactiveNeededForCapacity'),
);
const insideUnit = is('roomUse', 'dwellingBedroom', 'unitBalcony');

export const R113 = defineRule({
  id: 'R-113',
  title: 'No manual bolts outside the code’s list',
  family: 'rooms',
  book: 'ibc',
  cites: [under('boltLocks')],
  confidence: 'secondary',
  note: 'The closed list of 2018 and 2021 names business, factory and storage pairs, storage and equipment rooms, and doors inside a unit that nobody needs; it was read second-hand. The table of 2024 was not seen; from general knowledge it names mercantile pairs too, so a reviewer reads it there.',
  why: 'In a crowd no one stoops to pull a flush bolt.',
  clauses: [
    {
      key: 'b',
      effect: 'require',
      when: all(boltedPair, notListed, not(insideUnit), not(mercantile2024)),
      items: ['automaticFlushBolts'],
      says: 'The code does not list this group among the pairs that may have manual bolts, so automatic bolts, or exit devices on both leaves, replace them.',
    },
    {
      key: 'c',
      effect: 'signOff',
      grade: 'must',
      when: all(boltedPair, notListed, not(insideUnit), mercantile2024),
      says: 'Whether the table of 2024 lets this mercantile pair keep manual bolts was not read here: a reviewer reads it and confirms that the leaf need not serve people.',
    },
  ],
});
