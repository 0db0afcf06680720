import { text } from '../../codes/sections.ts';
import { all, is, not, under as below, yes } from '../../logic/condition.ts';
import { type CaseRow, cases, defineRule } from '../rule.ts';

/** Both standards are about doors people walk through; a revolving door has a standard of its own. */
const pedestrian = all(
  yes('accessibleRoute'),
  not(
    is(
      'doorType',
      'overhead',
      'grille',
      'gateSwing',
      'gateSlide',
      'revolving',
      'turnstile',
      'turnstileFull',
      'turnstileSecurity',
    ),
  ),
);

export const R157 = defineRule({
  id: 'R-157',
  title: 'Powered doors on an accessible route',
  family: 'access',
  book: 'ada',
  cites: [text('ada', '404.3', 'Automatic and power-assisted doors')],
  confidence: 'memory',
  why: 'A door that moves by itself can strike or shut out the person it was meant to help.',
  clauses: [
    {
      key: 'a',
      effect: 'caution',
      when: all(pedestrian, is('operator', 'fullPower')),
      says: 'A full-power operator is bought to A156.10, and its actuator stands clear of the swing.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: all(pedestrian, is('operator', 'lowEnergy', 'powerAssist')),
      says: 'A low-energy or assisted operator is bought to A156.19, and its actuator stands clear of the swing.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: all(
        pedestrian,
        is('operator', 'lowEnergy', 'fullPower', 'powerAssist'),
        below('clearWidthIn', 'clearWidthMinIn'),
      ),
      says: 'Without power the door leaves {clearWidthIn}; on an accessible route it needs 32 in, or standby power, or a manual door beside it.',
    },
  ],
  cases: cases(
    [
      'full power',
      { doorType: 'single', accessibleRoute: true, operator: 'fullPower' },
      'yes',
      { clause: 'a', does: 'caution' },
    ],
    [
      'low energy',
      { doorType: 'single', accessibleRoute: true, operator: 'lowEnergy' },
      'no',
      { clause: 'a' },
    ],
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
    [
      'full power',
      { doorType: 'single', accessibleRoute: true, operator: 'fullPower' },
      'no',
      { clause: 'b' },
    ],
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
  ),
});
