import { text, under } from '../../codes/sections.ts';
import { all, is, nfpa101 } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const emptyRoof = all(is('egressRole', 'roofDoor'), is('roofUse', 'unoccupied'));

export const R63 = defineRule({
  id: 'R-63',
  title: 'An unoccupied roof may be locked',
  family: 'stairs',
  book: 'ibc',
  cites: [under('locksAndLatches'), text('nfpa101', '7.2.1.5', 'Roof access from stairs')],
  confidence: 'secondary',
  note: 'A key on the stair side is accepted by this rule but judged with all keyed locks in R-12.',
  why: 'No one but workers is on such a roof, so it needs no re-entry and no free access.',
  clauses: [
    {
      key: 'a',
      effect: 'permit',
      when: emptyRoof,
      of: { release: ['free', 'keyInside'] },
      says: 'The roof is not occupied: this door may be locked both toward the roof and from the roof.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: all(nfpa101(), emptyRoof),
      says: 'NFPA 101 wants one of two things: no one gets onto the roof from the stair, or anyone there can come back in.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: emptyRoof,
      says: 'Ask the local fire department how it wants to reach the roof; many keep a practice of their own.',
    },
    {
      key: 'd',
      effect: 'caution',
      when: emptyRoof,
      of: { not: { family: ['none'] } },
      says: 'A worker who lets the door close is stranded on the roof: give the roof side a key, a reader or a telephone, or a stop with an alarm, and say so on a sign.',
    },
  ],
});
