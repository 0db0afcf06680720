import { cases } from '../rule.ts';

const sealed = { egressRole: 'sealedOff', readerSides: 'none', wishScheduledUnlock: false } as const;

export const B90Cases = cases(
  ['reader', { ...sealed, readerSides: 'secure' }, 'yes', { does: 'warn readerSides' }],
  ['set hours', { ...sealed, wishScheduledUnlock: true }, 'yes'],
  ['neither', sealed, 'no'],
  ['exit with a reader', { ...sealed, egressRole: 'exteriorExit', readerSides: 'secure' }, 'no'],
  ['reader or not: not asked', { egressRole: 'sealedOff', wishScheduledUnlock: false }, 'unknown'],
);
