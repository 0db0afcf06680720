import { text, under } from '../../codes/sections.ts';
import { all, any, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R132 = defineRule({
  id: 'R-132',
  title: 'Detention buildings are never decided here',
  family: 'health',
  book: 'ibc',
  cites: [
    under('detentionUse'),
    under('detentionLocking'),
    text('nfpa101', 'chapters 22 and 23', 'Detention'),
  ],
  confidence: 'memory',
  note: 'Sallyports second-hand, the rest from general knowledge. Releasing a cell from afar does not cut its power: such locks stay locked without it.',
  why: 'People in custody depend on someone else for every step out.',
  clauses: [
    {
      key: 'a',
      effect: 'refer',
      when: all(is('occupancyGroup', 'I-3'), any(is('roomUse', 'detention'), yes('wishControlledEgress'))),
      says: 'This door keeps residents in; lock, release and power belong to the detention designer and the reviewer.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: is('occupancyGroup', 'I-3'),
      says: 'Every door of a detention building goes to a reviewer.',
    },
    {
      key: 'c',
      effect: 'require',
      when: any(is('occupancyGroup', 'I-3'), is('roomUse', 'detention')),
      of: { release: ['attended'] },
      items: ['detentionRelease', 'keyCylinder', 'ahjApproval', 'acceptanceTest'],
      says: 'The lock opens from outside the living area and by hand or key at the door; power locks have emergency power or a mechanical release. The authority accepts it, and its test is on record.',
    },
  ],
});
