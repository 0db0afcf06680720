import { text } from '../../codes/sections.ts';
import { all, is, not, under as below, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

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
});
