import { cases } from '../rule.ts';

const wishes = { readerSides: 'none', wishScheduledUnlock: false } as const;

export const N09Cases = cases(
  ...(['turnstile', 'turnstileFull', 'turnstileSecurity', 'revolving', 'folding'] as const).flatMap(
    (doorType) =>
      [
        [
          `${doorType}, reader`,
          { ...wishes, doorType, readerSides: 'secure' },
          'yes',
          { clause: 'a', does: 'refer' },
        ],
        [`${doorType}, hours`, { ...wishes, doorType, wishScheduledUnlock: true }, 'yes', { clause: 'a' }],
        [`${doorType}, nothing wished`, { ...wishes, doorType }, 'yes', { clause: 'b', does: 'caution' }],
      ] as const,
  ),
  ['turnstile, nothing wished', { ...wishes, doorType: 'turnstile' }, 'no', { clause: 'a' }],
  ['hinged door, reader', { ...wishes, doorType: 'single', readerSides: 'secure' }, 'no', { clause: 'a' }],
  [
    'automatic sliding door, reader',
    { ...wishes, doorType: 'slidingAutomatic', readerSides: 'secure' },
    'no',
    { clause: 'a' },
  ],
  ['wishes not asked', { doorType: 'revolving' }, 'unknown', { clause: 'a' }],
  ['turnstile, reader', { ...wishes, doorType: 'turnstile', readerSides: 'secure' }, 'no', { clause: 'b' }],
  [
    'turnstile, hours',
    { ...wishes, doorType: 'turnstile', wishScheduledUnlock: true },
    'no',
    { clause: 'b' },
  ],
  ['hinged door', { ...wishes, doorType: 'single' }, 'no', { clause: 'b' }],
  ['wishes not asked', { doorType: 'revolving' }, 'unknown', { clause: 'b' }],
);
