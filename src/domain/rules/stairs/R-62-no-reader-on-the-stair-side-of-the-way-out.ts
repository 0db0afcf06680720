import { under } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const readerOnTheWayOut = all(is('egressRole', 'stairDischarge'), is('readerSides', 'both'));

export const R62 = defineRule({
  id: 'R-62',
  title: 'No credential to leave a stair',
  family: 'stairs',
  book: 'ibc',
  cites: [under('stairDoors'), under('monitoredEgress')],
  confidence: 'secondary',
  why: 'A reader that must be used inside the stair locks the exit itself.',
  clauses: [
    {
      effect: 'prohibit',
      when: readerOnTheWayOut,
      of: { release: ['credentialOut'] },
      says: 'A credential would be needed to leave the stair.',
    },
  ],
});
