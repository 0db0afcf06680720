import { under as cite } from '../../codes/sections.ts';
import { all, any, atLeast, is, no, not, under, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { nfpaAlone } from './conditions.ts';

const sheltered = is('occupancyGroup', 'I-1.1', 'I-1.2', 'I-4');
const another = atLeast('delayedDoorsOnPath', 'delayedDoorsPerPathIbc');

export const R88 = defineRule({
  id: 'R-88',
  title: 'Two delayed doors in institutional groups',
  family: 'special',
  book: 'ibc',
  cites: [cite('delayedEgress')],
  confidence: 'read',
  note: 'I-2 and I-3 as quoted. I-1 and I-4 (2018 on, sprinklered) are from general knowledge, so they are only refused or brought to a reviewer, never waved through.',
  why: 'Care and custody need a second delayed door at times, but the combined wait stays at 30 s.',
  clauses: [
    {
      key: 'a',
      effect: 'permit',
      when: all(
        not(nfpaAlone),
        is('occupancyGroup', 'I-2', 'I-3'),
        another,
        under('delayedDoorsOnPath', 'delayedDoorsPerPathGroupIIbc'),
      ),
      of: { release: ['delayed'] },
      says: 'Here two delayed doors are allowed in one egress path if their delays together do not exceed 30 s.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: all(not(nfpaAlone), yes('groupI'), another),
      of: { release: ['delayed'] },
      says: 'A reviewer adds up the delays in this egress path; together they may not exceed 30 s.',
    },
    {
      key: 'c',
      effect: 'prohibit',
      when: all(not(nfpaAlone), yes('groupI'), atLeast('delayedDoorsOnPath', 'delayedDoorsPerPathGroupIIbc')),
      of: { release: ['delayed'] },
      says: 'There are already two delayed doors in this egress path, and a third is never allowed.',
    },
    {
      key: 'd',
      effect: 'prohibit',
      when: all(not(nfpaAlone), sheltered, another, no('fullSprinklers')),
      of: { release: ['delayed'] },
      says: 'A second delayed door in this group needs a building sprinklered throughout.',
    },
    {
      key: 'e',
      effect: 'prohibit',
      when: all(not(nfpaAlone), yes('groupI'), another, yes('wishDelay30s')),
      of: { release: ['delayed'] },
      says: 'With another delayed door on the way, a delay of 30 s here would make people wait longer than 30 s in all.',
    },
    {
      key: 'f',
      effect: 'caution',
      when: all(
        not(nfpaAlone),
        any(is('occupancyGroup', 'I-2', 'I-3'), all(sheltered, yes('fullSprinklers'))),
        another,
      ),
      of: { release: ['delayed'] },
      says: 'Set this door and the other delayed one to 15 s each.',
    },
  ],
});
