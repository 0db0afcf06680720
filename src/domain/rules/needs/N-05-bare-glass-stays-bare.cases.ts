import { cases } from '../rule.ts';

export const N05Cases = cases(
  ['bare look wished', { wishGlassBareLook: true }, 'yes', { on: 'magnet/safe/sensor', does: 'prohibit' }],
  ['delayed magnet shows too', { wishGlassBareLook: true }, 'yes', { on: 'delayedMagnet/safe/delayed' }],
  ['rim strike shows', { wishGlassBareLook: true }, 'yes', { on: 'strikeRim/secure/free' }],
  ['battery lock shows', { wishGlassBareLook: true }, 'yes', { on: 'batteryLock/asIs/free' }],
  ['a bar in the rail shows', { wishGlassBareLook: true }, 'yes', { on: 'glassRailExit/secure/free' }],
  ['trim of a bar shows', { wishGlassBareLook: true }, 'yes', { on: 'exitTrim/secure/free' }],
  ['a delayed bar shows', { wishGlassBareLook: true }, 'yes', { on: 'delayedExitDevice/safe/delayed' }],
  [
    'a shear magnet hides in the header',
    { wishGlassBareLook: true },
    'no',
    { on: 'shearMagnet/safe/sensor' },
  ],
  ['look does not matter', { wishGlassBareLook: false }, 'no', { on: 'magnet/safe/sensor' }],
  ['not asked', {}, 'unknown', { on: 'magnet/safe/sensor' }],
);
