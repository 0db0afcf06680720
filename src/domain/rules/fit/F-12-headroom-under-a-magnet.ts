import { text } from '../../codes/sections.ts';
import { all, any, atLeast, under, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

const walkedThrough = any(yes('isEgress'), yes('accessibleRoute'));
const magnet = 'magnet/safe/sensor';
const delayed = 'delayedMagnet/safe/delayed';

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
  cases: cases(
    [
      '80 in frame',
      { egressRole: 'exitAccess', leafHeightIn: 80 },
      'yes',
      { clause: 'a', on: magnet, does: 'signOff must' },
    ],
    [
      '80 in frame, delayed magnet',
      { egressRole: 'exitAccess', leafHeightIn: 80 },
      'yes',
      { clause: 'a', on: delayed },
    ],
    [
      'just under 82 in',
      { egressRole: 'exitAccess', leafHeightIn: 81.99 },
      'yes',
      { clause: 'a', on: magnet },
    ],
    ['82 in', { egressRole: 'exitAccess', leafHeightIn: 82 }, 'no', { clause: 'a', on: magnet }],
    [
      'accessible route without egress',
      { egressRole: 'noOccupiedSpace', accessibleRoute: true, leafHeightIn: 80 },
      'yes',
      { clause: 'a', on: magnet },
    ],
    [
      'nobody walks through',
      { egressRole: 'noOccupiedSpace', accessibleRoute: false, leafHeightIn: 80 },
      'no',
      { clause: 'a', on: magnet },
    ],
    ['height not measured', { egressRole: 'exitAccess' }, 'unknown', { clause: 'a', on: magnet }],
    [
      'a shear magnet lies inside the header',
      { egressRole: 'exitAccess', leafHeightIn: 80 },
      'no',
      { clause: 'a', on: 'shearMagnet/safe/sensor' },
    ],
    [
      '82 in, thin magnet',
      { egressRole: 'exitAccess', leafHeightIn: 82 },
      'yes',
      { clause: 'b', on: magnet, does: 'caution' },
    ],
    [
      '82 in, delayed magnet',
      { egressRole: 'exitAccess', leafHeightIn: 82 },
      'yes',
      { clause: 'b', on: delayed },
    ],
    [
      'just under 83 in',
      { egressRole: 'exitAccess', leafHeightIn: 82.99 },
      'yes',
      { clause: 'b', on: magnet },
    ],
    ['83 in', { egressRole: 'exitAccess', leafHeightIn: 83 }, 'no', { clause: 'b', on: magnet }],
    [
      'under 82 in is the other clause',
      { egressRole: 'exitAccess', leafHeightIn: 81.99 },
      'no',
      { clause: 'b', on: magnet },
    ],
    [
      '82 in on an accessible route',
      { egressRole: 'noOccupiedSpace', accessibleRoute: true, leafHeightIn: 82 },
      'yes',
      { clause: 'b', on: magnet },
    ],
    [
      '82 in, nobody walks through',
      { egressRole: 'noOccupiedSpace', accessibleRoute: false, leafHeightIn: 82 },
      'no',
      { clause: 'b', on: magnet },
    ],
    ['not measured, thin magnet', { egressRole: 'exitAccess' }, 'unknown', { clause: 'b', on: magnet }],
    [
      '82 in, shear magnet',
      { egressRole: 'exitAccess', leafHeightIn: 82 },
      'no',
      { clause: 'b', on: 'shearMagnet/safe/sensor' },
    ],
  ),
});
