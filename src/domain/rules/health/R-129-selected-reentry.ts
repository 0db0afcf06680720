import { under } from '../../codes/sections.ts';
import { all, ibc, is, nfpa101, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const selected = all(nfpa101(), is('egressRole', 'stairEntry'), yes('selectedReentry'));

export const R129 = defineRule({
  id: 'R-129',
  title: 'Selected re-entry floors',
  family: 'health',
  book: 'nfpa101',
  cites: [under('stairDoorsNfpa')],
  confidence: 'secondary',
  note: 'Read in a summary of an old edition; the rest is from general knowledge.',
  why: 'If only some floors allow re-entry, a person in smoke must learn from the door which ones.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: selected,
      items: ['signReentry'],
      says: 'Signs on the stair side name the re-entry doors; at every other door they tell the nearest re-entry or exit up and down.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: selected,
      says: 'A reviewer confirms at least two re-entry levels, no more than four stories between them, the top or next-to-top level among them, and another exit from each.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: all(ibc(), selected),
      says: 'The IBC is also adopted and has no selected re-entry: every locked stair door must unlock together with the others.',
    },
  ],
});
