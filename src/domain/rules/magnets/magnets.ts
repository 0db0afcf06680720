import type { DeviceId } from '../../devices/devices.ts';

/** Everything that holds the leaf by magnetism; the delayed magnet stands in another family. */
export const magnetDevices: readonly DeviceId[] = ['magnet', 'shearMagnet', 'delayedMagnet'];
