import { under } from '../../codes/sections.ts';
import { all, any, ibc, is, isKnown, nfpa101, no, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R10 = defineRule({
  id: 'R-10',
  title: 'Every door provided for egress counts, even where its role is unknown',
  family: 'foundations',
  book: 'ibc',
  cites: [under('freeEgressIbc'), under('freeEgressNfpa')],
  confidence: 'secondary',
  note: 'NFPA 101 speaks of doors in a means of egress and does not name surplus doors; how they count there is for the authority to interpret.',
  why: 'People use any door that looks like an exit, so a door is treated as one until someone shows otherwise.',
  clauses: [
    {
      key: 'a',
      effect: 'signOff',
      grade: 'must',
      // A sign nobody looked for leaves the door as unknown as a sign that is not there.
      when: all(not(isKnown('egressRole')), any(not(isKnown('exitSign')), no('exitSign'))),
      says: 'The egress role of this door is not known; it is treated as an egress door until a reviewer states otherwise.',
    },
    {
      key: 'b',
      effect: 'finding',
      field: 'egressRole',
      severity: 'warn',
      when: all(not(isKnown('egressRole')), yes('exitSign')),
      says: 'There is an exit sign, so people leave by this door; enter its egress role.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: all(ibc(), is('egressRole', 'convenience')),
      says: 'The plan does not need this door for egress, but people can use it, so the rules for egress doors apply in full.',
    },
    {
      key: 'd',
      effect: 'signOff',
      grade: 'note',
      when: all(nfpa101(), not(ibc()), is('egressRole', 'convenience')),
      says: 'A surplus door is treated as an egress door here; under NFPA 101 alone the authority may see it differently.',
    },
  ],
});
