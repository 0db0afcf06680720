import { under } from '../../codes/sections.ts';
import { all, any, atLeast, ibc, is, not, under as below, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { nfpaAlone } from './conditions.ts';

/** The survey counts the other delayed doors, so one other makes two on the path. */
const another = atLeast('delayedDoorsOnPath', 'delayedDoorsPerPathIbc');
const twoAllowed = any(
  is('occupancyGroup', 'I-2', 'I-3'),
  all(is('occupancyGroup', 'I-1.1', 'I-1.2', 'I-4'), yes('fullSprinklers')),
);

export const R68 = defineRule({
  id: 'R-68',
  title: 'Not a delay at the stair and another at its foot',
  family: 'stairs',
  book: 'ibc',
  cites: [under('delayedEgress'), under('delayedEgressNfpa')],
  confidence: 'read',
  note: 'Read as quoted. Two delayed doors in Groups I-1 and I-4 with sprinklers: from general knowledge. NFPA 101 sets no general number.',
  why: 'Two delays in one egress path add up while smoke follows people down the stair.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(
        ibc(),
        yes('isStairDoor'),
        any(all(another, not(twoAllowed)), atLeast('delayedDoorsOnPath', 'delayedDoorsPerPathGroupIIbc')),
      ),
      of: { release: ['delayed'] },
      says: 'Another door in the same egress path is already delayed, and the stair may not add a second delay here.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: all(
        ibc(),
        yes('isStairDoor'),
        twoAllowed,
        another,
        below('delayedDoorsOnPath', 'delayedDoorsPerPathGroupIIbc'),
      ),
      of: { release: ['delayed'] },
      says: 'This use may have two delayed doors in one egress path if both delays together stay within 30 s; a reviewer confirms it.',
    },
    {
      key: 'c',
      effect: 'signOff',
      grade: 'must',
      when: all(nfpaAlone, yes('isStairDoor'), another),
      of: { release: ['delayed'] },
      says: 'NFPA 101 counts delayed doors only in some occupancy chapters: a reviewer reads the chapter for this second delay.',
    },
  ],
});
