import { cases } from '../rule.ts';

export const R141Cases = cases(
  [
    'jail vestibule',
    { wishInterlock: true, occupancyGroup: 'I-3', roomUse: 'other' },
    'yes',
    { clause: 'a', does: 'refer' },
  ],
  [
    'jail vestibule',
    { wishInterlock: true, occupancyGroup: 'I-3', roomUse: 'other' },
    'yes',
    { clause: 'b', does: ['interlockOverride'] },
  ],
  [
    'holding area of a police office',
    { wishInterlock: true, occupancyGroup: 'B', roomUse: 'detention' },
    'yes',
    { clause: 'a' },
  ],
  [
    'holding area of a police office',
    { wishInterlock: true, occupancyGroup: 'B', roomUse: 'detention' },
    'yes',
    { clause: 'b' },
  ],
  [
    'data center vestibule',
    { wishInterlock: true, occupancyGroup: 'B', roomUse: 'serverRoom' },
    'no',
    { clause: 'a' },
  ],
  [
    'data center vestibule',
    { wishInterlock: true, occupancyGroup: 'B', roomUse: 'serverRoom' },
    'no',
    { clause: 'b' },
  ],
  [
    'jail door, no interlock',
    { wishInterlock: false, occupancyGroup: 'I-3', roomUse: 'detention' },
    'no',
    { clause: 'a' },
  ],
  [
    'jail door, no interlock',
    { wishInterlock: false, occupancyGroup: 'I-3', roomUse: 'detention' },
    'no',
    { clause: 'b' },
  ],
  ['interlock not asked', { occupancyGroup: 'I-3', roomUse: 'detention' }, 'unknown', { clause: 'a' }],
  ['interlock not asked', { occupancyGroup: 'I-3', roomUse: 'detention' }, 'unknown', { clause: 'b' }],
);
