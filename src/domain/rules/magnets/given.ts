/** One candidate of each, for cases. */
export const oneOfEachMagnet = [
  'magnet/safe/sensor',
  'shearMagnet/safe/doorSwitch',
  'delayedMagnet/safe/delayed',
];
