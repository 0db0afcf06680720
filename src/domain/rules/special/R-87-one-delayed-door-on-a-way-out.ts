import { under } from '../../codes/sections.ts';
import { all, atLeast, no, not } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';
import { nfpaAlone } from './conditions.ts';

const on = 'delayedExitDevice/safe/delayed';
const second = { occupancyGroup: 'B', delayedDoorsOnPath: 1 } as const;
const alone = { ibc: null, nfpa101: 2021 } as const;

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
  cases: cases(
    ['second delayed door of an office', second, 'yes', { clause: 'a', on, does: 'prohibit' }],
    ['the only clause', { ...second, delayedDoorsOnPath: 0 }, 'no', { clause: 'a', on }],
    ['hospital, see R-88', { ...second, occupancyGroup: 'I-2' }, 'no', { clause: 'a', on }],
    ['number not known', { occupancyGroup: 'B' }, 'unknown', { clause: 'a', on }],
    ['NFPA 101 alone', second, 'no', { clause: 'a', on, basis: alone }],
    ['both books', second, 'yes', { clause: 'a', on, basis: { nfpa101: 2021 } }],
    ['no book chosen', second, 'yes', { clause: 'a', on, basis: { ibc: null } }],
    ['a free bar on the way', second, 'no', { clause: 'a', on: 'exitTrim/secure/free' }],
    ['NFPA 101 alone, second door', second, 'yes', { clause: 'b', on, basis: alone, does: 'signOff must' }],
    [
      'NFPA 101 alone, the only clause',
      { ...second, delayedDoorsOnPath: 0 },
      'no',
      { clause: 'b', on, basis: alone },
    ],
    ['both books: refused already', second, 'no', { clause: 'b', on, basis: { nfpa101: 2021 } }],
    ['no book', second, 'no', { clause: 'b', on, basis: { ibc: null } }],
    ['number not known', {}, 'unknown', { clause: 'b', on, basis: alone }],
    ['a free bar on the way', second, 'no', { clause: 'b', on: 'exitTrim/secure/free', basis: alone }],
  ),
});
