import { cases } from '../rule.ts';

export const B38Cases = cases(
  [
    'coordinator',
    { doorType: 'single', coordinator: true, mullion: false },
    'yes',
    { does: 'warn doorType' },
  ],
  ['mullion', { doorType: 'single', coordinator: false, mullion: true }, 'yes'],
  ['neither', { doorType: 'single', coordinator: false, mullion: false }, 'no'],
  ['pair', { doorType: 'pair', coordinator: true, mullion: true }, 'no'],
  ['door type not known', { coordinator: true }, 'unknown'],
);
