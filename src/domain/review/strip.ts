import type { FactKey } from '../model/fields.ts';

/**
 * Facts on which most of the life-safety rules turn; nobody can sign for an opening without them before the eyes. They
 * are part of what is signed, whether a rule reads them here or not.
 */
export const stripKeys = [
  'occupancyGroup',
  'occupantLoad',
  'egressRole',
  'wallKind',
  'sprinklered',
  'detectionThroughout',
  'fireAlarm',
] as const satisfies readonly FactKey[];

/** Kept with every signature: the strip, and what the door itself is. Another door is another thing to sign for. */
export const signedKeys: readonly FactKey[] = [
  ...stripKeys,
  'fireRatingMin',
  'doorType',
  'leafMaterial',
  'latch',
];
