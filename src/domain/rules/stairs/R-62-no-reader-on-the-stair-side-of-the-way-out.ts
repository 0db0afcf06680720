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
      effect: 'prohibit',
      when: readerOnTheWayOut,
      of: { release: ['credentialOut'] },
      says: 'A credential would be needed to leave the stair.',
    },
  ],
  cases: cases(
    ['readers on both sides', bad, 'yes', { on: 'mortiseLock/safe/credentialOut', does: 'prohibit' }],
    ['reader outside', { ...bad, readerSides: 'secure' }, 'no', { on: 'mortiseLock/safe/credentialOut' }],
    ['office door', { ...bad, egressRole: 'exitAccess' }, 'no', { on: 'mortiseLock/safe/credentialOut' }],
    ['a free lever stays possible', bad, 'no', { on: 'mortiseLock/safe/free' }],
    [
      'reader not asked',
      { egressRole: 'stairDischarge' },
      'unknown',
      { on: 'mortiseLock/safe/credentialOut' },
    ],
  ),
});
