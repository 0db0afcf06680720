import { under } from '../../codes/sections.ts';
import { all, is, not } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { nfpaAlone } from './conditions.ts';

export const R89 = defineRule({
  id: 'R-89',
  title: 'Controlled egress only where people are cared for',
  family: 'special',
  book: 'ibc',
  cites: [under('controlledEgress'), under('controlledEgressNfpa')],
  confidence: 'secondary',
  note: 'Under NFPA 101 alone only ambulatory care (here Group B) and board and care (R-4) are left to a reviewer beside health care; every other use is refused as the safe side.',
  why: 'Keeping people in until staff open the door is allowed only where staff look after them all the time.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(not(nfpaAlone), not(is('occupancyGroup', 'I-1.1', 'I-1.2', 'I-2'))),
      of: { release: ['controlled'] },
      says: 'Controlled egress is for Groups I-1 and I-2 only; elsewhere people let themselves out.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: all(nfpaAlone, not(is('occupancyGroup', 'I-1.1', 'I-1.2', 'I-2', 'R-4', 'B'))),
      of: { release: ['controlled'] },
      says: 'No care is given in this use, so no one may be kept in until staff open.',
    },
    {
      key: 'c',
      effect: 'signOff',
      grade: 'must',
      when: all(nfpaAlone, is('occupancyGroup', 'R-4', 'B')),
      of: { release: ['controlled'] },
      says: 'Outside hospitals and nursing homes NFPA 101 allows this only where the occupancy chapter says so; a reviewer reads it.',
    },
  ],
});
