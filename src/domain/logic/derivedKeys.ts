/** Yes/no facts that are worked out from surveyed ones, in `derived.ts`, in this order. */
export const derivedKeys = [
  'isEgress',
  'fireRated',
  'isPair',
  'isSwinging',
  'isStairDoor',
  'stairSideToLock',
  'floorSideToLock',
  'groupA',
  'groupE',
  'groupH',
  'groupI',
  'hasExitDevice',
  'panicRequired',
  'panicWithLock',
  'wantsReader',
  'fullSprinklers',
  'peopleOnLockedSide',
] as const;
export type DerivedKey = (typeof derivedKeys)[number];

const names: ReadonlySet<string> = new Set(derivedKeys);
export function isDerivedKey(key: string): key is DerivedKey {
  return names.has(key);
}
