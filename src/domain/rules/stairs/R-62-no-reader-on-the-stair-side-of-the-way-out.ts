import { under } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

const readerOnTheWayOut = all(is('egressRole', 'stairDischarge'), is('readerSides', 'both'));
const bad = { egressRole: 'stairDischarge', readerSides: 'both' } as const;

export const R62 = defineRule({
  id: 'R-62',
  title: 'No credential to leave a stair',
  family: 'stairs',
  book: 'ibc',
  cites: [under('stairDoors'), under('monitoredEgress')],
  confidence: 'secondary',
  why: 'A reader that must be used inside the stair locks the exit itself.',
  clauses: [
    {
      key: 'a',
      effect: 'finding',
      field: 'readerSides',
      severity: 'warn',
      when: readerOnTheWayOut,
      says: 'A reader is wished for inside the stair at its way out: it may at most record people or quiet an alarm, and the survey should say so.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: readerOnTheWayOut,
      of: { release: ['credentialOut'] },
      says: 'A credential would be needed to leave the stair.',
    },
  ],
  cases: cases(
    ['readers on both sides', bad, 'yes', { clause: 'a' }],
    ['inside reader records only', { ...bad, readerSides: 'recordOut' }, 'no', { clause: 'a' }],
    ['reader outside', { ...bad, readerSides: 'secure' }, 'no', { clause: 'a' }],
    ['office door with readers on both sides', { ...bad, egressRole: 'exitAccess' }, 'no', { clause: 'a' }],
    ['reader not asked', { egressRole: 'stairDischarge' }, 'unknown', { clause: 'a' }],
    ['readers on both sides', bad, 'yes', { clause: 'b', on: 'mortiseLock/safe/credentialOut' }],
    [
      'reader outside',
      { ...bad, readerSides: 'secure' },
      'no',
      { clause: 'b', on: 'mortiseLock/safe/credentialOut' },
    ],
    [
      'office door',
      { ...bad, egressRole: 'exitAccess' },
      'no',
      { clause: 'b', on: 'mortiseLock/safe/credentialOut' },
    ],
    ['a free lever stays possible', bad, 'no', { clause: 'b', on: 'mortiseLock/safe/free' }],
    [
      'reader not asked',
      { egressRole: 'stairDischarge' },
      'unknown',
      { clause: 'b', on: 'mortiseLock/safe/credentialOut' },
    ],
  ),
});
