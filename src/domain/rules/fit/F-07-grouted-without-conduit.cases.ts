import { cases } from '../rule.ts';

export const F07Cases = cases(
  [
    'grouted, no conduit',
    { frameGrouted: true, frameConduit: false, frameMaterial: 'hollowMetal' },
    'yes',
    { on: 'strikeMortise/secure/free', does: ['frameRaceway'] },
  ],
  [
    'masonry wall, no conduit',
    { frameGrouted: false, wallConstruction: 'masonry', frameConduit: false, frameMaterial: 'wood' },
    'yes',
    { on: 'strikeMortise/secure/free' },
  ],
  [
    'grouted with a conduit',
    { frameGrouted: true, frameConduit: true },
    'no',
    { on: 'strikeMortise/secure/free' },
  ],
  [
    'gypsum wall, not grouted',
    { frameGrouted: false, wallConstruction: 'gypsum', frameConduit: false },
    'no',
    { on: 'strikeMortise/secure/free' },
  ],
  ['grouted, conduit not surveyed', { frameGrouted: true }, 'unknown', { on: 'strikeMortise/secure/free' }],
  [
    'a battery lock needs no wire',
    { frameGrouted: true, frameConduit: false, frameMaterial: 'hollowMetal' },
    'no',
    { on: 'batteryLock/asIs/free' },
  ],
);
