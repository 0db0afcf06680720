import { cases } from '../rule.ts';

const on = 'delayedExitDevice/safe/delayed';

export const R84Cases = cases(
  [
    'neither',
    { sprinklered: false, sprinklerKind: 'nfpa13', detectionThroughout: false },
    'yes',
    { on, does: 'prohibit' },
  ],
  [
    'sprinklers only',
    { sprinklered: true, sprinklerKind: 'nfpa13', detectionThroughout: false },
    'no',
    { on },
  ],
  [
    'detection only',
    { sprinklered: false, sprinklerKind: 'nfpa13', detectionThroughout: true },
    'no',
    { on },
  ],
  ['sprinklers, detection not asked', { sprinklered: true, sprinklerKind: 'nfpa13' }, 'no', { on }],
  ['no sprinklers, detection not asked', { sprinklered: false, sprinklerKind: 'nfpa13' }, 'unknown', { on }],
  ['nothing surveyed', {}, 'unknown', { on }],
  [
    'a free bar is not meant',
    { sprinklered: false, sprinklerKind: 'nfpa13', detectionThroughout: false },
    'no',
    { on: 'exitTrim/secure/free' },
  ],
  [
    'apartments, full system',
    { occupancyGroup: 'R-2', sprinklered: true, sprinklerKind: 'nfpa13', detectionThroughout: false },
    'no',
    { on },
  ],
  [
    'apartments, NFPA 13R',
    { occupancyGroup: 'R-2', sprinklered: true, sprinklerKind: 'nfpa13R', detectionThroughout: false },
    'yes',
    { on },
  ],
  [
    'apartments, kind not known',
    { occupancyGroup: 'R-2', sprinklered: true, detectionThroughout: false },
    'unknown',
    { on },
  ],
  [
    'offices, kind not asked',
    { occupancyGroup: 'B', sprinklered: true, detectionThroughout: false },
    'no',
    { on },
  ],
);
