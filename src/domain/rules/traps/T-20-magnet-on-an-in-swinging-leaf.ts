import { text } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

export const T20 = defineRule({
  id: 'T-20',
  title: 'Magnet on an in-swinging leaf',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'practice',
  note: 'Headroom under a magnet is rule F-12.',
  why: 'The magnet sits on the side people push from; a leaf that swings in cannot meet it there without a bracket.',
  clauses: [
    {
      effect: 'require',
      items: ['magnetBracket'],
      when: all(yes('isSwinging'), is('handing', 'LH', 'RH')),
      of: { device: ['magnet', 'delayedMagnet'] },
      says: 'The leaf swings in, so the armature hangs on a Z-bracket.',
    },
  ],
  cases: cases(
    ...onEach(
      ['magnet/safe/sensor', 'delayedMagnet/safe/delayed'],
      'left, swings in',
      { doorType: 'single', handing: 'LH' },
      'yes',
    ),
    [
      'right, swings in',
      { doorType: 'pair', handing: 'RH' },
      'yes',
      { on: 'magnet/safe/sensor', does: ['magnetBracket'] },
    ],
    ['left, swings out', { doorType: 'single', handing: 'LHR' }, 'no', { on: 'magnet/safe/sensor' }],
    ['right, swings out', { doorType: 'single', handing: 'RHR' }, 'no', { on: 'magnet/safe/sensor' }],
    ['hand not surveyed', { doorType: 'single' }, 'unknown', { on: 'magnet/safe/sensor' }],
    ['a sliding leaf has no hand', { doorType: 'slidingAutomatic' }, 'no', { on: 'magnet/safe/sensor' }],
    ['a shear magnet lies in the header', { handing: 'LH' }, 'no', { on: 'shearMagnet/safe/sensor' }],
  ),
});
