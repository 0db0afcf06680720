import { cases } from '../rule.ts';
import { without } from '../without.ts';

const closer = {
  doorType: 'single',
  accessibleRoute: true,
  closing: 'selfClosing',
  workStatus: 'new',
  fireRatingMin: 0,
  wallRatingMin: 0,
} as const;

const missing = {
  doorType: 'single',
  accessibleRoute: true,
  closing: 'none',
  workStatus: 'existing',
  fireRatingMin: 45,
} as const;

export const R158Cases = cases(
  ['6 lbf', { accessibleRoute: true, hardwareForceLbf: 6 }, 'yes', { clause: 'a', does: 'caution' }],
  ['5 lbf', { accessibleRoute: true, hardwareForceLbf: 5 }, 'no', { clause: 'a' }],
  ['not on the route', { accessibleRoute: false, hardwareForceLbf: 14 }, 'no', { clause: 'a' }],
  ['not measured', { accessibleRoute: true }, 'unknown', { clause: 'a' }],
  [
    '16 lbf under IBC 2021 or 2024',
    { hardwareForceLbf: 16 },
    'yes',
    { clause: 'b', basis: { ibc: 2021 }, does: 'caution' },
  ],
  ['16 lbf under IBC 2021 or 2024', { hardwareForceLbf: 16 }, 'yes', { clause: 'b', basis: { ibc: 2024 } }],
  ['15 lbf', { hardwareForceLbf: 15 }, 'no', { clause: 'b' }],
  ['IBC 2018', { hardwareForceLbf: 16 }, 'no', { clause: 'b', basis: { ibc: 2018 } }],
  ['IBC not adopted', { hardwareForceLbf: 16 }, 'no', { clause: 'b', basis: { ibc: null } }],
  ['not measured', {}, 'unknown', { clause: 'b' }],
  ['closer of a new door', closer, 'yes', { clause: 'c', does: 'caution' }],
  ['closer of an altered door', { ...closer, workStatus: 'altered' }, 'yes', { clause: 'c' }],
  ['closer that is there and stays', { ...closer, workStatus: 'existing' }, 'no', { clause: 'c' }],
  ['new door without a closer', { ...closer, closing: 'none' }, 'no', { clause: 'c' }],
  ['new door not on the route', { ...closer, accessibleRoute: false }, 'no', { clause: 'c' }],
  ['work not known', without(closer, 'workStatus'), 'unknown', { clause: 'c' }],
  ['new pair', { ...closer, doorType: 'pair' }, 'yes', { clause: 'c' }],
  ['new sliding door', { ...closer, doorType: 'slidingAutomatic' }, 'no', { clause: 'c' }],
  ['new shutter', { ...closer, doorType: 'overhead' }, 'no', { clause: 'c' }],
  ['kind of door not known', without(closer, 'doorType'), 'unknown', { clause: 'c' }],
  ['fire door that gets its closer', missing, 'yes', { clause: 'c' }],
  ['the same not on the route', { ...missing, accessibleRoute: false }, 'no', { clause: 'c' }],
  ['fire door with a closer', { ...missing, closing: 'selfClosing' }, 'no', { clause: 'c' }],
  ['door that needs none', { ...missing, fireRatingMin: 0, wallRatingMin: 0 }, 'no', { clause: 'c' }],
  ['rating not known', without(missing, 'fireRatingMin'), 'unknown', { clause: 'c' }],
);
