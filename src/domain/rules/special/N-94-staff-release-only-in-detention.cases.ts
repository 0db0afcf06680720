import { cases } from '../rule.ts';

const on = 'detentionLock/none/attended';

export const N94Cases = cases(
  ['holding room', { roomUse: 'detention', occupancyGroup: 'B', egressRole: 'exitAccess' }, 'no', { on }],
  [
    'corridor of a prison',
    { roomUse: 'corridor', occupancyGroup: 'I-3', egressRole: 'exitAccess' },
    'no',
    { on },
  ],
  ['holding room, group not known', { roomUse: 'detention', egressRole: 'exitAccess' }, 'no', { on }],
  ['prison, room not known', { occupancyGroup: 'I-3', egressRole: 'exitAccess' }, 'no', { on }],
  [
    'office',
    { roomUse: 'office', occupancyGroup: 'B', egressRole: 'exitAccess' },
    'yes',
    { on, does: 'prohibit' },
  ],
  ['room and group not known', { egressRole: 'exitAccess' }, 'yes', { on }],
  ['office, group not known', { roomUse: 'office', egressRole: 'exitAccess' }, 'yes', { on }],
  ['business, room not known', { occupancyGroup: 'B', egressRole: 'exitAccess' }, 'yes', { on }],
  [
    'cabinet in a prison',
    { roomUse: 'corridor', occupancyGroup: 'I-3', egressRole: 'noOccupiedSpace' },
    'yes',
    { on },
  ],
  ['holding room, role not known', { roomUse: 'detention', occupancyGroup: 'I-3' }, 'unknown', { on }],
  [
    'a free lever is not meant',
    { roomUse: 'office', occupancyGroup: 'B' },
    'no',
    { on: 'mortiseLock/safe/free' },
  ],
);
