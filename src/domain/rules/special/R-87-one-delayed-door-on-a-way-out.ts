import { under } from '../../codes/sections.ts';
import { all, atLeast, no, not } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { nfpaAlone } from './conditions.ts';

export const R87 = defineRule({
  id: 'R-87',
  title: 'One delayed door in an egress path',
  family: 'special',
  book: 'ibc',
  cites: [under('delayedEgress'), under('delayedEgressNfpa')],
  confidence: 'read',
  note: 'IBC since 2015, quoted. That NFPA 101 sets no general count was read second-hand; its lodging or rooming houses have one.',
  why: 'Delays add up for a person who meets two such doors.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(not(nfpaAlone), no('groupI'), atLeast('delayedDoorsOnPath', 'delayedDoorsPerPathIbc')),
      of: { release: ['delayed'] },
      says: 'There is another delayed door in the same egress path, and only one is allowed from any point.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: all(nfpaAlone, atLeast('delayedDoorsOnPath', 1)),
      of: { release: ['delayed'] },
      says: 'NFPA 101 sets no general number of delayed doors, but some chapters do; a reviewer reads the one for this use.',
    },
  ],
});
