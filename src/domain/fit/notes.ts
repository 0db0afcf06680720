import type { Device, DeviceFamily } from '../devices/devices.ts';
import type { ItemId, Trade } from '../devices/items.ts';

export interface FitNote {
  readonly says: string;
  readonly trade: Trade;
  /** Extra hours, common practice, no source. */
  readonly hours: number;
  readonly items?: readonly ItemId[];
  /** A labeled leaf or frame may not simply be worked on like this. */
  readonly cutsLabeledDoor?: true;
}

/** The change each numbered note of the fit matrix asks for. Trade practice, no source. */
export const fitNotes: Readonly<Record<number, FitNote>> = {
  1: {
    says: 'Header at least 1-3/4 in deep inside, a pocket at the leaf top, a strong closer, gap held to 1/8 in.',
    trade: 'locksmith',
    hours: 1,
    cutsLabeledDoor: true,
  },
  2: {
    says: 'Pocket in header or jamb, hole in the leaf edge, position switch so the bolt never throws on an open door.',
    trade: 'locksmith',
    hours: 1,
    items: ['doorPosition'],
    cutsLabeledDoor: true,
  },
  3: {
    says: 'The leaf needs a new lock preparation; a labeled leaf is replaced by one made with it.',
    trade: 'doorSupplier',
    hours: 2,
    cutsLabeledDoor: true,
  },
  4: {
    says: 'A filler or wrap plate covers the old preparation; on a labeled door it takes a new leaf made for the new lock.',
    trade: 'locksmith',
    hours: 2.5,
    cutsLabeledDoor: true,
  },
  5: {
    says: 'A strike does not clear a thrown deadbolt: use one made for latch and bolt, or take the deadbolt out of use.',
    trade: 'locksmith',
    hours: 0.5,
  },
  6: {
    says: 'Replace the outside trim with battery trim made for that exit device.',
    trade: 'locksmith',
    hours: 0.5,
  },
  7: {
    says: 'The strike goes in the inactive leaf: cut its edge, add a power transfer, hold it top and bottom with bolts.',
    trade: 'locksmith',
    hours: 1.5,
    items: ['powerTransfer'],
    cutsLabeledDoor: true,
  },
  8: {
    says: 'Chip out the grout, use a low-profile strike body, provide a new cable path.',
    trade: 'locksmith',
    hours: 1,
  },
  9: {
    says: 'Chisel deep into the jamb and fasten with long screws into the stud; the jamb limits the strength.',
    trade: 'locksmith',
    hours: 1,
  },
  10: { says: 'The leaf needs solid blocking for through-bolts.', trade: 'doorSupplier', hours: 1 },
  11: {
    says: 'Use a strike made for aluminum (short face, center-hung or offset) that matches leaf thickness; it releases a deadlatch only.',
    trade: 'locksmith',
    hours: 0.5,
  },
  12: { says: 'Only with a battery trim made for that deadlatch.', trade: 'locksmith', hours: 1.5 },
  13: {
    says: 'Glass armature bracket or rail; check the glass thickness.',
    trade: 'security',
    hours: 1,
    items: ['glassBracket'],
  },
  14: { says: 'Pocket in the header or the floor.', trade: 'locksmith', hours: 2 },
  15: { says: 'Clamp-on battery lock for glass with its own strike box.', trade: 'locksmith', hours: 1.5 },
  16: { says: 'Strike at the header for the rail device’s top latch.', trade: 'locksmith', hours: 1 },
  17: { says: 'Use a magnet made for sliding leaves or gates.', trade: 'security', hours: 1.5 },
  18: {
    says: 'Weather-rated device, weatherproof box and cable entry, rigid posts, gate held to a small gap by its closer.',
    trade: 'security',
    hours: 1,
    items: ['weatherRated', 'closer'],
  },
  19: {
    says: 'Only to hold it shut outside egress hours, with a closed-position switch; people leave by a separate side-hinged leaf.',
    trade: 'security',
    hours: 1,
    items: ['doorPosition'],
  },
  20: {
    says: 'Check tube depth and backset: the keeper or the lock case must be made for that stile.',
    trade: 'locksmith',
    hours: 0.5,
  },
  21: { says: 'There is nothing on the leaf for the device to act on.', trade: 'locksmith', hours: 0 },
  22: { says: 'Needs the full release set wherever the leaf serves egress.', trade: 'security', hours: 0 },
  23: {
    says: 'The strike is on the rod leaf, with a power transfer; the rod leaf must latch first, so check the closing sequence.',
    trade: 'locksmith',
    hours: 1.5,
    items: ['powerTransfer', 'coordinator'],
  },
  24: {
    says: 'The separate deadbolt is not released: remove it, or install an interconnected lock that retracts latch and bolt with one inside motion.',
    trade: 'locksmith',
    hours: 0.75,
  },
  25: {
    says: 'The lock belongs to the operator’s own package, tied to its breakout, fire-alarm and power-loss behavior.',
    trade: 'doorSupplier',
    hours: 1,
  },
  26: {
    says: 'Remove the existing lock, install a delayed-egress bar, cover the old holes.',
    trade: 'locksmith',
    hours: 1,
    cutsLabeledDoor: true,
  },
  27: {
    says: 'Any bolt must retract with the same single inside motion as the latch, or be removed.',
    trade: 'locksmith',
    hours: 0.75,
  },
  28: {
    says: 'Replace the bolt body with a latch body of the same cutout and backset, and the strike plate too.',
    trade: 'locksmith',
    hours: 0.75,
  },
  29: {
    says: 'New full-width rails top and bottom; usually a new leaf.',
    trade: 'doorSupplier',
    hours: 3,
    items: ['glassRails'],
  },
  30: { says: 'A magnet at the head lets the bottom of this leaf flex.', trade: 'security', hours: 0 },
  31: {
    says: 'Leaf, frame, glass and hardware are listed as one system: use only what that listing names.',
    trade: 'doorSupplier',
    hours: 0,
  },
  32: {
    says: 'The stile is cut for a narrow-stile latch, with a lever or paddle inside and its strike in the frame.',
    trade: 'locksmith',
    hours: 2,
  },
  33: {
    says: 'The hinge jamb is grouted too: chisel in a box for the power transfer, or run an armored loop on the surface.',
    trade: 'locksmith',
    hours: 0.5,
  },
  34: {
    says: 'The operator’s manufacturer or installer provides the reader input, and states how its lock behaves on fire alarm, on loss of power and when the leaf is pushed.',
    trade: 'doorSupplier',
    hours: 1,
  },
};

/** A transfer at the hinges, mortised in and connected. Common practice, no source. */
export const transferHours = 1;

const pocketInFrame: readonly DeviceFamily[] = ['strike', 'bolt'];
/** What a grouted frame in place adds to the work of a device; a new frame comes with guards and boxes. */
export function groutNote({ family, transfer }: Device): number | undefined {
  return pocketInFrame.includes(family) ? 8 : transfer ? 33 : undefined;
}
