import type { Candidate, CandidateMatch } from '../devices/candidates.ts';
import { device as deviceOf, deviceIds } from '../devices/devices.ts';
import { all, any, is, isKnown, not, yes } from '../logic/condition.ts';
import type { FactValue } from '../model/fields.ts';
import { barLatches, bareLatches, handBolts, leverLatches } from '../model/latches.ts';

/**
 * Every lock on the leaf counts, not only the one that was chosen. What hangs beside it decides with it who gets
 * through: a magnet that lets go opens nothing while the lever under it is locked. Rules read the conditions and
 * matches here, the simulation reads `leafLockOf`, and both speak of the same locks.
 */

const besideDevices = deviceIds.filter((id) => deviceOf(id).besideLeafLock);
export const besideLeafLock: CandidateMatch = {
  device: [
    ...besideDevices.filter((id) => deviceOf(id).holdsByMagnet),
    ...besideDevices.filter((id) => !deviceOf(id).holdsByMagnet),
  ],
};
export const leverOrBarOnLeaf = is('latch', ...leverLatches, ...barLatches);
export const handBoltOnLeaf = is('latch', ...handBolts);
/** A lever or bolt that a crowd would have to work by hand, whatever kind. */
export const lockWithoutBarOnLeaf = is('latch', ...leverLatches, ...handBolts);
/** Surveyed, and locked from outside by key, button, or for want of a trim; a leaf without a latch has no such lock. */
export const locksOutside = all(
  is('lockFunction', 'storeroom', 'classroom', 'office', 'none'),
  not(all(isKnown('latch'), is('latch', ...bareLatches))),
);
/** A function that nobody surveyed is no free lever. */
export const outsideNotKnownFree = not(all(isKnown('lockFunction'), is('lockFunction', 'passage')));
/** The electric lock is to let somebody in from outside. */
export const entryByElectricLock = any(yes('wantsReader'), yes('wishScheduledUnlock'));

export type LeafLockKind = 'none' | 'lever' | 'bar' | 'handBolt';
export interface LeafLock {
  readonly kind: LeafLockKind;
  /** It holds the leaf closed, whatever the chosen device does. */
  readonly latches: boolean;
  /** Its outside is locked while nobody uses a key. */
  readonly outsideLocked: 'yes' | 'no' | 'notKnown';
  /** It may be thrown, and nothing on the egress side but a hand at the bolt itself draws it. */
  readonly heldByHand: boolean;
}

const noLeafLock: LeafLock = { kind: 'none', latches: false, outsideLocked: 'no', heldByHand: false };
const oneOf = (list: readonly string[], value: string | undefined) =>
  value !== undefined && list.includes(value);

/** The lock that stays on the leaf or comes with it beside the chosen device, or is the whole choice. */
export function leafLockOf(
  { device }: Candidate,
  latch: FactValue<'latch'> | undefined,
  lockFunction: FactValue<'lockFunction'> | undefined,
  has: (
    ...items: readonly ('passageFunction' | 'lockTakenOff' | 'panicHardware' | 'fireExitHardware')[]
  ) => boolean,
): LeafLock {
  const outsideLocked =
    has('passageFunction') || lockFunction === 'passage'
      ? 'no'
      : lockFunction === undefined
        ? 'notKnown'
        : 'yes';
  if (device.family === 'mechanical') {
    const bar = oneOf(barLatches, latch) || has('panicHardware', 'fireExitHardware');
    return { kind: bar ? 'bar' : 'lever', latches: true, outsideLocked, heldByHand: false };
  }
  if (!device.besideLeafLock) return noLeafLock;
  if (oneOf(leverLatches, latch)) return { kind: 'lever', latches: true, outsideLocked, heldByHand: false };
  const comes = has('panicHardware', 'fireExitHardware');
  if (comes || oneOf(barLatches, latch)) {
    return { kind: 'bar', latches: true, outsideLocked, heldByHand: false };
  }
  if (oneOf(handBolts, latch) && !has('lockTakenOff')) {
    return { kind: 'handBolt', latches: true, outsideLocked: 'yes', heldByHand: true };
  }
  return noLeafLock;
}
