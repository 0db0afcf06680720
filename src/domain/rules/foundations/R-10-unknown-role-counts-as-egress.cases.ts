import { cases } from '../rule.ts';

export const R10Cases = cases(
  ['no role, no exit sign', { exitSign: false }, 'yes', { clause: 'a', does: 'signOff must' }],
  ['no role, exit sign', { exitSign: true }, 'no', { clause: 'a' }],
  ['no role, sign not looked for', {}, 'yes', { clause: 'a' }],
  ['role known, sign not looked for', { egressRole: 'sealedOff' }, 'no', { clause: 'a' }],
  ['role known', { egressRole: 'exitAccess', exitSign: false }, 'no', { clause: 'a' }],
  ['no role, exit sign', { exitSign: true }, 'yes', { clause: 'b', does: 'warn egressRole' }],
  ['no role, no exit sign', { exitSign: false }, 'no', { clause: 'b' }],
  ['role known, exit sign', { egressRole: 'exteriorExit', exitSign: true }, 'no', { clause: 'b' }],
  ['no role, sign not looked for', {}, 'unknown', { clause: 'b' }],
  ['surplus door', { egressRole: 'convenience' }, 'yes', { clause: 'c', does: 'caution' }],
  ['needed door', { egressRole: 'exitAccess' }, 'no', { clause: 'c' }],
  ['role not known', {}, 'unknown', { clause: 'c' }],
  [
    'surplus door, IBC not adopted',
    { egressRole: 'convenience' },
    'no',
    { clause: 'c', basis: { ibc: null, nfpa101: 2021 } },
  ],
  [
    'surplus door, NFPA 101 alone',
    { egressRole: 'convenience' },
    'yes',
    { clause: 'd', basis: { ibc: null, nfpa101: 2021 }, does: 'signOff note' },
  ],
  [
    'surplus door, both codes',
    { egressRole: 'convenience' },
    'no',
    { clause: 'd', basis: { nfpa101: 2021 } },
  ],
  ['surplus door, neither code', { egressRole: 'convenience' }, 'no', { clause: 'd', basis: { ibc: null } }],
  [
    'needed door, NFPA 101 alone',
    { egressRole: 'exitAccess' },
    'no',
    { clause: 'd', basis: { ibc: null, nfpa101: 2021 } },
  ],
  ['role not known, NFPA 101 alone', {}, 'unknown', { clause: 'd', basis: { ibc: null, nfpa101: 2021 } }],
);
