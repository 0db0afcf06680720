import { cases } from '../rule.ts';
import { without } from '../without.ts';

const on = 'delayedExitDevice/safe/delayed';

const classroom = { occupancyGroup: 'E', roomUse: 'classroom', occupantLoad: 49 } as const;

const alone = { ibc: null, nfpa101: 2021 } as const;

export const R83Cases = cases(
  ['classroom for 49', classroom, 'no', { clause: 'a', on }],
  ['classroom for 50', { ...classroom, occupantLoad: 50 }, 'yes', { clause: 'a', on, does: 'prohibit' }],
  ['school corridor door', { ...classroom, roomUse: 'corridor' }, 'yes', { clause: 'a', on }],
  ['load not known', without(classroom, 'occupantLoad'), 'unknown', { clause: 'a', on }],
  [
    'college classroom in B',
    { ...classroom, occupancyGroup: 'B', occupantLoad: 60 },
    'no',
    { clause: 'a', on },
  ],
  [
    'large classroom, NFPA 101 alone',
    { ...classroom, occupantLoad: 60 },
    'no',
    { clause: 'a', on, basis: alone },
  ],
  [
    'large classroom, both books',
    { ...classroom, occupantLoad: 60 },
    'yes',
    { clause: 'a', on, basis: { nfpa101: 2024 } },
  ],
  [
    'large classroom, no book chosen',
    { ...classroom, occupantLoad: 60 },
    'yes',
    { clause: 'a', on, basis: { ibc: null } },
  ],
  [
    'large classroom, IBC 2018',
    { ...classroom, occupantLoad: 50 },
    'yes',
    { clause: 'a', on, basis: { ibc: 2018 } },
  ],
  [
    'large classroom, IBC 2024',
    { ...classroom, occupantLoad: 50 },
    'yes',
    { clause: 'a', on, basis: { ibc: 2024 } },
  ],
  [
    'a free bar is not meant',
    { ...classroom, occupantLoad: 60 },
    'no',
    { clause: 'a', on: 'exitTrim/secure/free' },
  ],
  ['school, NFPA 101 alone', classroom, 'yes', { clause: 'b', on, basis: alone, does: 'signOff must' }],
  ['school, both books', classroom, 'no', { clause: 'b', on, basis: { nfpa101: 2021 } }],
  ['school, no book', classroom, 'no', { clause: 'b', on, basis: { ibc: null } }],
  ['office, NFPA 101 alone', { occupancyGroup: 'B' }, 'no', { clause: 'b', on, basis: alone }],
  ['group not known', {}, 'unknown', { clause: 'b', on, basis: alone }],
  ['a free lever at school', classroom, 'no', { clause: 'b', on: 'mortiseLock/secure/free', basis: alone }],
);
