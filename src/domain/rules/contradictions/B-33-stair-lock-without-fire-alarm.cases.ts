import { cases } from '../rule.ts';

export const B33Cases = cases(
  [
    'no alarm under IBC 2024',
    { egressRole: 'stairEntry', stairLockWanted: 'stairSide', singleExitStair: false, fireAlarm: false },
    'yes',
    { basis: { ibc: 2024 }, does: 'warn fireAlarm' },
  ],
  [
    'no alarm under IBC 2021',
    { egressRole: 'stairEntry', stairLockWanted: 'stairSide', singleExitStair: false, fireAlarm: false },
    'no',
  ],
  [
    'IBC not adopted',
    { egressRole: 'stairEntry', stairLockWanted: 'stairSide', singleExitStair: false, fireAlarm: false },
    'no',
    { basis: { ibc: null } },
  ],
  [
    'alarm there',
    { egressRole: 'stairEntry', stairLockWanted: 'stairSide', singleExitStair: false, fireAlarm: true },
    'no',
    { basis: { ibc: 2024 } },
  ],
  [
    'stays open',
    { egressRole: 'stairEntry', stairLockWanted: 'none', singleExitStair: false, fireAlarm: false },
    'no',
    { basis: { ibc: 2024 } },
  ],
  [
    'single exit stair',
    { egressRole: 'stairEntry', stairLockWanted: 'stairSide', singleExitStair: true, fireAlarm: false },
    'no',
    { basis: { ibc: 2024 } },
  ],
  [
    'alarm not surveyed',
    { egressRole: 'stairEntry', stairLockWanted: 'stairSide', singleExitStair: false },
    'unknown',
    { basis: { ibc: 2024 } },
  ],
);
