import { under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R155 = defineRule({
  id: 'R-155',
  title: 'A bolted leaf gives no exit width',
  family: 'access',
  book: 'ibc',
  cites: [under('egressCapacity'), under('doorWidth')],
  confidence: 'memory',
  note: 'The clear width that one leaf must give is checked by F-10.',
  why: 'People who leave in a hurry do not look for the bolts of the second leaf.',
  clauses: [
    {
      effect: 'caution',
      when: all(
        yes('isPair'),
        is('inactiveBolts', 'manualFlush', 'constantLatching'),
        yes('inactiveNeededForCapacity'),
      ),
      says: 'The second leaf is counted for the exit width though a person must first draw its bolts; both leaves count only if both are free to open.',
    },
  ],
});
