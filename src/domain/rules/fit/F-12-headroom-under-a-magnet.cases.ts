import { cases } from '../rule.ts';

const magnet = 'magnet/safe/sensor';

const delayed = 'delayedMagnet/safe/delayed';

export const F12Cases = cases(
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
  ['just under 82 in', { egressRole: 'exitAccess', leafHeightIn: 81.99 }, 'yes', { clause: 'a', on: magnet }],
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
  ['just under 83 in', { egressRole: 'exitAccess', leafHeightIn: 82.99 }, 'yes', { clause: 'b', on: magnet }],
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
);
