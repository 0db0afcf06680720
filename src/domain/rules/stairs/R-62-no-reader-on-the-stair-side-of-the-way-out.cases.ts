import { cases } from '../rule.ts';

const bad = { egressRole: 'stairDischarge', readerSides: 'both' } as const;

export const R62Cases = cases(
  ['readers on both sides', bad, 'yes', { on: 'mortiseLock/safe/credentialOut', does: 'prohibit' }],
  ['reader outside', { ...bad, readerSides: 'secure' }, 'no', { on: 'mortiseLock/safe/credentialOut' }],
  ['office door', { ...bad, egressRole: 'exitAccess' }, 'no', { on: 'mortiseLock/safe/credentialOut' }],
  ['a free lever stays possible', bad, 'no', { on: 'mortiseLock/safe/free' }],
  ['reader not asked', { egressRole: 'stairDischarge' }, 'unknown', { on: 'mortiseLock/safe/credentialOut' }],
);
