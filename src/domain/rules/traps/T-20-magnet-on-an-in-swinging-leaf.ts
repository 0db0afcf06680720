import { text } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
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
      when: is('handing', 'LH', 'RH'),
      of: { device: ['magnet', 'delayedMagnet'] },
      says: 'The leaf swings in, so the armature hangs on a Z-bracket.',
    },
  ],
  cases: cases(
    ...onEach(
      ['magnet/safe/sensor', 'delayedMagnet/safe/delayed'],
      'left, swings in',
      { handing: 'LH' },
      'yes',
    ),
    ['right, swings in', { handing: 'RH' }, 'yes', { on: 'magnet/safe/sensor', does: ['magnetBracket'] }],
    ['left, swings out', { handing: 'LHR' }, 'no', { on: 'magnet/safe/sensor' }],
    ['right, swings out', { handing: 'RHR' }, 'no', { on: 'magnet/safe/sensor' }],
    ['hand not surveyed', {}, 'unknown', { on: 'magnet/safe/sensor' }],
    ['a shear magnet lies in the header', { handing: 'LH' }, 'no', { on: 'shearMagnet/safe/sensor' }],
  ),
});
