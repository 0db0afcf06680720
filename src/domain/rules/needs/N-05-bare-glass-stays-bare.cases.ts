import { cases } from '../rule.ts';

const bare = { wishGlassBareLook: true, leafMaterial: 'glassFrameless' } as const;

export const N05Cases = cases(
  ['bare look wished', bare, 'yes', { on: 'magnet/safe/sensor', does: 'prohibit' }],
  ['delayed magnet shows too', bare, 'yes', { on: 'delayedMagnet/safe/delayed' }],
  ['rim strike shows', bare, 'yes', { on: 'strikeRim/secure/free' }],
  ['battery lock shows', bare, 'yes', { on: 'batteryLock/asIs/free' }],
  ['a bar in the rail shows', bare, 'yes', { on: 'glassRailExit/secure/free' }],
  ['trim of a bar shows', bare, 'yes', { on: 'exitTrim/secure/free' }],
  ['a delayed bar shows', bare, 'yes', { on: 'delayedExitDevice/safe/delayed' }],
  ['a shear magnet hides in the header', bare, 'no', { on: 'shearMagnet/safe/sensor' }],
  ['look does not matter', { ...bare, wishGlassBareLook: false }, 'no', { on: 'magnet/safe/sensor' }],
  ['steel leaf', { ...bare, leafMaterial: 'hollowMetal' }, 'no', { on: 'strikeRim/secure/free' }],
  ['not asked', { leafMaterial: 'glassFrameless' }, 'unknown', { on: 'magnet/safe/sensor' }],
);
