import { cases } from '../rule.ts';

export const B35Cases = cases(
  [
    'readers on both sides',
    { egressRole: 'stairDischarge', readerSides: 'both' },
    'yes',
    { does: 'refuse readerSides' },
  ],
  ['reader outside', { egressRole: 'stairDischarge', readerSides: 'secure' }, 'no'],
  ['inside reader records', { egressRole: 'stairDischarge', readerSides: 'recordOut' }, 'no'],
  ['office', { egressRole: 'exitAccess', readerSides: 'both' }, 'no'],
  ['readers not known', { egressRole: 'stairDischarge' }, 'unknown'],
);
