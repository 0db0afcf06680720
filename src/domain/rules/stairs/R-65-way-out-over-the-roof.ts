import { under } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const overRoof = all(is('egressRole', 'roofDoor'), is('roofUse', 'egressPath'));

export const R65 = defineRule({
  id: 'R-65',
  title: 'Where egress leads over the roof its door opens freely',
  family: 'stairs',
  book: 'ibc',
  cites: [under('freeEgressIbc'), under('freeEgressNfpa')],
  confidence: 'secondary',
  why: 'It is rare that people leave upward, but then the roof door is an exit like any other.',
  clauses: [
    {
      key: 'a',
      effect: 'signOff',
      grade: 'must',
      when: overRoof,
      says: 'The egress path leads up and over the roof: a reviewer confirms the path and both sides of this door.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: overRoof,
      of: { failMode: ['secure', 'asIs', 'none'], not: { release: ['free'] } },
      says: 'It can stay locked against people going up when power fails, and no lever or bar frees it.',
    },
  ],
});
