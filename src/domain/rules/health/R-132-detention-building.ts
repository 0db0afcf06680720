import { text, under } from '../../codes/sections.ts';
import { all, any, is, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

const cell = { occupancyGroup: 'I-3', roomUse: 'detention', wishControlledEgress: false } as const;
const office = { ...cell, roomUse: 'office' } as const;
const on = 'detentionLock/none/attended';

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
  cases: cases(
    ['cell', cell, 'yes', { clause: 'a', does: 'refer' }],
    [
      'corridor that keeps residents in',
      { ...office, roomUse: 'corridor', wishControlledEgress: true },
      'yes',
      { clause: 'a' },
    ],
    ['staff office', office, 'no', { clause: 'a' }],
    ['holding room elsewhere, R-103', { ...cell, occupancyGroup: 'B' }, 'no', { clause: 'a' }],
    ['group not known', { roomUse: 'detention' }, 'unknown', { clause: 'a' }],
    ['staff office', office, 'yes', { clause: 'b', does: 'signOff must' }],
    ['courthouse office', { ...office, occupancyGroup: 'B' }, 'no', { clause: 'b' }],
    ['group not known', {}, 'unknown', { clause: 'b' }],
    [
      'cell',
      cell,
      'yes',
      { clause: 'c', on, does: ['detentionRelease', 'keyCylinder', 'ahjApproval', 'acceptanceTest'] },
    ],
    ['prison corridor', office, 'yes', { clause: 'c', on }],
    ['holding room elsewhere', { ...cell, occupancyGroup: 'B' }, 'yes', { clause: 'c', on }],
    ['office elsewhere', { ...office, occupancyGroup: 'B' }, 'no', { clause: 'c', on }],
    ['nothing known', {}, 'unknown', { clause: 'c', on }],
    ['a free lever in a prison', office, 'no', { clause: 'c', on: 'mortiseLock/secure/free' }],
  ),
});
