import { cases } from '../rule.ts';

export const R148Cases = cases(
  [
    'private space under IBC 2021',
    { roomUse: 'unitBalcony' },
    'yes',
    { clause: 'a', does: 'signOff should' },
  ],
  ['private space under IBC 2021', { roomUse: 'officeTerrace' }, 'yes', { clause: 'a' }],
  ['balcony under IBC 2024', { roomUse: 'unitBalcony' }, 'yes', { clause: 'a', basis: { ibc: 2024 } }],
  ['balcony under IBC 2018', { roomUse: 'unitBalcony' }, 'no', { clause: 'a', basis: { ibc: 2018 } }],
  ['IBC not adopted', { roomUse: 'unitBalcony' }, 'no', { clause: 'a', basis: { ibc: null } }],
  ['office', { roomUse: 'office' }, 'no', { clause: 'a' }],
  ['room not known', {}, 'unknown', { clause: 'a' }],
  [
    'private space under IBC 2018',
    { roomUse: 'unitBalcony' },
    'yes',
    { clause: 'b', basis: { ibc: 2018 }, does: 'signOff must' },
  ],
  [
    'private space under IBC 2018',
    { roomUse: 'officeTerrace' },
    'yes',
    { clause: 'b', basis: { ibc: 2018 } },
  ],
  ['balcony under IBC 2021', { roomUse: 'unitBalcony' }, 'no', { clause: 'b' }],
  ['NFPA 101 alone', { roomUse: 'unitBalcony' }, 'yes', { clause: 'b', basis: { ibc: null, nfpa101: 2021 } }],
  [
    'NFPA 101 beside IBC 2021',
    { roomUse: 'officeTerrace' },
    'yes',
    { clause: 'b', basis: { nfpa101: 2021 } },
  ],
  ['office', { roomUse: 'office' }, 'no', { clause: 'b', basis: { ibc: 2018 } }],
  ['room not known', {}, 'unknown', { clause: 'b', basis: { ibc: 2018 } }],
);
