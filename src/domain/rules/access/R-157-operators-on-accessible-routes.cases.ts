import { type CaseRow, cases } from '../rule.ts';

export const R157Cases = cases(
  [
    'full power',
    { doorType: 'single', accessibleRoute: true, operator: 'fullPower' },
    'yes',
    { clause: 'a', does: 'caution' },
  ],
  ['low energy', { doorType: 'single', accessibleRoute: true, operator: 'lowEnergy' }, 'no', { clause: 'a' }],
  [
    'not on the route',
    { doorType: 'single', accessibleRoute: false, operator: 'fullPower' },
    'no',
    { clause: 'a' },
  ],
  ['route not known', { doorType: 'single', operator: 'fullPower' }, 'unknown', { clause: 'a' }],
  [
    'low energy or assist',
    { doorType: 'single', accessibleRoute: true, operator: 'lowEnergy' },
    'yes',
    { clause: 'b', does: 'caution' },
  ],
  [
    'low energy or assist',
    { doorType: 'single', accessibleRoute: true, operator: 'powerAssist' },
    'yes',
    { clause: 'b' },
  ],
  ['full power', { doorType: 'single', accessibleRoute: true, operator: 'fullPower' }, 'no', { clause: 'b' }],
  [
    'not on the route',
    { doorType: 'single', accessibleRoute: false, operator: 'lowEnergy' },
    'no',
    { clause: 'b' },
  ],
  ['route not known', { doorType: 'single', operator: 'lowEnergy' }, 'unknown', { clause: 'b' }],
  [
    '31 in',
    { doorType: 'single', accessibleRoute: true, operator: 'lowEnergy', clearWidthIn: 31 },
    'yes',
    { clause: 'c', does: 'caution' },
  ],
  [
    'just under 32 in',
    { doorType: 'single', accessibleRoute: true, operator: 'fullPower', clearWidthIn: 31.9375 },
    'yes',
    { clause: 'c' },
  ],
  [
    '31 in',
    { doorType: 'single', accessibleRoute: true, operator: 'powerAssist', clearWidthIn: 31 },
    'yes',
    { clause: 'c' },
  ],
  [
    '32 in',
    { doorType: 'single', accessibleRoute: true, operator: 'fullPower', clearWidthIn: 32 },
    'no',
    { clause: 'c' },
  ],
  [
    'no operator',
    { doorType: 'single', accessibleRoute: true, operator: 'none', clearWidthIn: 31 },
    'no',
    { clause: 'c' },
  ],
  [
    'not on the route',
    { doorType: 'single', accessibleRoute: false, operator: 'fullPower', clearWidthIn: 31 },
    'no',
    { clause: 'c' },
  ],
  [
    'not measured',
    { doorType: 'single', accessibleRoute: true, operator: 'fullPower' },
    'unknown',
    { clause: 'c' },
  ],
  ...(
    [
      'overhead',
      'grille',
      'gateSwing',
      'gateSlide',
      'revolving',
      'turnstile',
      'turnstileFull',
      'turnstileSecurity',
    ] as const
  ).flatMap((doorType): readonly CaseRow[] => [
    [
      'no door of these standards',
      { doorType, accessibleRoute: true, operator: 'fullPower' },
      'no',
      { clause: 'a' },
    ],
    [
      'no door of these standards',
      { doorType, accessibleRoute: true, operator: 'lowEnergy' },
      'no',
      { clause: 'b' },
    ],
    [
      'no door of these standards',
      { doorType, accessibleRoute: true, operator: 'fullPower', clearWidthIn: 31 },
      'no',
      { clause: 'c' },
    ],
  ]),
  [
    'automatic slider',
    { doorType: 'slidingAutomatic', accessibleRoute: true, operator: 'fullPower' },
    'yes',
    { clause: 'a' },
  ],
  ['door type not known', { accessibleRoute: true, operator: 'fullPower' }, 'unknown', { clause: 'a' }],
);
