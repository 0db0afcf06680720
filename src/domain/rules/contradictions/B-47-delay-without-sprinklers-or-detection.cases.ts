import { cases } from '../rule.ts';

export const B47Cases = cases(
  [
    'neither',
    { wishDelayedEgress: true, sprinklered: false, sprinklerKind: 'nfpa13', detectionThroughout: false },
    'yes',
    { does: 'warn wishDelayedEgress' },
  ],
  [
    'sprinklers',
    { wishDelayedEgress: true, sprinklered: true, sprinklerKind: 'nfpa13', detectionThroughout: false },
    'no',
  ],
  [
    'detection',
    { wishDelayedEgress: true, sprinklered: false, sprinklerKind: 'nfpa13', detectionThroughout: true },
    'no',
  ],
  [
    'not wanted',
    { wishDelayedEgress: false, sprinklered: false, sprinklerKind: 'nfpa13', detectionThroughout: false },
    'no',
  ],
  [
    'detection not known',
    { wishDelayedEgress: true, sprinklered: false, sprinklerKind: 'nfpa13' },
    'unknown',
  ],
);
