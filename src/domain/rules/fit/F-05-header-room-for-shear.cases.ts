import { cases } from '../rule.ts';

export const F05Cases = cases(
  ['shallow header', { headerRoom: false }, 'yes', { on: 'shearMagnet/safe/sensor', does: 'prohibit' }],
  ['deep header', { headerRoom: true }, 'no', { on: 'shearMagnet/safe/sensor' }],
  ['header not measured', {}, 'unknown', { on: 'shearMagnet/safe/sensor' }],
  ['a direct-hold magnet hangs under the header', { headerRoom: false }, 'no', { on: 'magnet/safe/sensor' }],
);
