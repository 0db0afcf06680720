import { text } from '../../codes/sections.ts';
import { all, any, atLeast, under, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const walkedThrough = any(yes('isEgress'), yes('accessibleRoute'));

export const F12 = defineRule({
  id: 'F-12',
  title: 'Clear height under a magnet',
  family: 'fit',
  book: 'ada',
  cites: [text('ada', '404.2.3', 'Clear height'), text('practice', '', 'Magnets 2 to 3 in deep')],
  confidence: 'inferred',
  note: 'The 80 in and the 78 in at closers and stops were read; whether a magnet counts as a stop varies with the authority. From general knowledge IBC 2021 on names electromagnetic locks among what may hang down to 78 in; the ADA Standards name closers and stops only.',
  why: 'A magnet hangs 2 to 3 in below the head, and 80 in must stay clear.',
  clauses: [
    {
      key: 'a',
      effect: 'signOff',
      grade: 'must',
      when: all(walkedThrough, under('leafHeightIn', 'magnetThinLeafHeightIn')),
      of: { device: ['magnet', 'delayedMagnet'] },
      says: 'Under a head of {leafHeightIn} any magnet leaves less than 80 in clear: ask the authority whether 78 in is accepted as at a closer, or take a shear magnet or a higher frame.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: all(
        walkedThrough,
        atLeast('leafHeightIn', 'magnetThinLeafHeightIn'),
        under('leafHeightIn', 'magnetDeepLeafHeightIn'),
      ),
      of: { device: ['magnet', 'delayedMagnet'] },
      says: 'Under a head of {leafHeightIn} only a shallow magnet leaves 80 in clear: check its depth.',
    },
  ],
});
