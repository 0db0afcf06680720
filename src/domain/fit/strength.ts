import { type DeviceId, device } from '../devices/devices.ts';
import type { FactValue } from '../model/fields.ts';
import { type Qty, qty } from '../units/quantity.ts';
import {
  type Band,
  doorEdgeLbf,
  frameLbf,
  groutAddsLbf,
  latchFigures,
  leastEngagementIn,
} from './strengthFigures.ts';

/**
 * Weakest-link strength of a closed, locked opening: force = min(device, latch, frame, door edge), lbf static.
 * Valid for a static pull on a sound door. It says nothing of blows (ft·lbf), prying, hinge pins, or glass.
 * Source: common practice, no standard sets it; standards rate single parts only (UL 1034, A156.23, A156.31).
 */
export type StrengthValues = {
  readonly [K in 'latch' | 'leafMaterial' | 'frameMaterial' | 'frameGrouted' | 'latchProjectionIn']?:
    | FactValue<K>
    | undefined;
};

export const memberNames = {
  device: 'Locking device',
  latch: 'Latch in the keeper',
  frame: 'Strike fixing and frame',
  doorEdge: 'Edge or face of the leaf',
} as const;
export type MemberId = keyof typeof memberNames;

export interface LimitingStrength {
  /** What can be relied on: the lowest force the known facts allow. */
  readonly lbf: Qty<'lbf'>;
  /** The highest the known facts allow; the same number once every fact is known. */
  readonly highestLbf: Qty<'lbf'>;
  /** The member that sets `lbf`. */
  readonly limitedBy: MemberId;
}

export interface StrengthMember {
  readonly id: MemberId;
  readonly name: string;
  readonly lowestLbf: Qty<'lbf'>;
  readonly highestLbf: Qty<'lbf'>;
  readonly says: string;
  readonly source: 'practice';
}

export interface StrengthExplained extends LimitingStrength {
  readonly members: readonly StrengthMember[];
  /** Less than 1/4 in of the latch lies in the keeper, or there is no latch for the device to work with. */
  readonly willNotHold: boolean;
}

type LatchKind = NonNullable<StrengthValues['latch']>;
/** Exit devices that stay on the leaf when their trim or latch is electrified. */
const exitLatches: readonly LatchKind[] = ['rimExit', 'verticalRods', 'rimPlusRods', 'railExit'];

/** Latches a strike works with. A strike frees a latch and never replaces it, so it is as strong as that latch. */
const strikeLatches: Readonly<Partial<Record<DeviceId, readonly LatchKind[]>>> = {
  strikeMortise: ['mortise', 'mortiseDeadbolt'],
  strikeCylindrical: ['bored', 'boredPlusDeadbolt', 'deadlatch'],
  strikeRim: ['rimExit', 'rimPlusRods', 'railExit'],
};

/** Devices that go onto an exit device and keep its latch; any other lock, magnet or bolt needs no present latch. */
const keepsExitLatch: Readonly<Partial<Record<DeviceId, true>>> = {
  exitTrim: true,
  latchRetractionMotor: true,
  latchRetractionSolenoid: true,
};

function span<K extends string>(table: Readonly<Partial<Record<K, Band>>>, end: 0 | 1): number {
  const figures = Object.values<Band | undefined>(table).map((band) => band?.[end] ?? 0);
  return end === 0 ? Math.min(...figures) : Math.max(...figures);
}
const anyFrame: Band = [span(frameLbf, 0), span(frameLbf, 1)];
const anyEdge: Band = [span(doorEdgeLbf, 0), span(doorEdgeLbf, 1)];
const noMember: Band = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
/** A latch the device does not work with: nothing can be said before the fit is settled. */
const misfitLatch: Band = [0, 1500];

/** Share of the latch's force left by its engagement, 0 to 1. Not measured: from the least that holds to full. */
function engaged(rated: number, actual: number | undefined, end: 0 | 1): number {
  if (actual === undefined) return end === 0 ? leastEngagementIn / rated : 1;
  if (actual < leastEngagementIn) return 0;
  return Math.min(1, actual / rated);
}

function latchEnd(kind: LatchKind, actual: number | undefined, end: 0 | 1): number {
  const figure = latchFigures[kind];
  return figure === undefined
    ? misfitLatch[end]
    : figure.lbf[end] * engaged(figure.ratedProjectionIn, actual, end);
}

/** The latch’s end of the band; infinite where no present latch takes part. */
function latchTerm(id: DeviceId, values: StrengthValues, end: 0 | 1): number {
  const { latch, latchProjectionIn } = values;
  const forStrike = strikeLatches[id];
  const kept = forStrike ?? (keepsExitLatch[id] ? exitLatches : undefined);
  if (kept === undefined) return noMember[end];
  if (latch === undefined) return anyLatchEnd(kept, latchProjectionIn, end);
  if (kept.includes(latch)) return latchEnd(latch, latchProjectionIn, end);
  // An exit device is put on where there is none, and brings its own latch.
  if (forStrike === undefined) return noMember[end];
  return latch === 'pushPull' || latch === 'roller'
    ? latchEnd(latch, latchProjectionIn, end)
    : misfitLatch[end];
}

function anyLatchEnd(kinds: readonly LatchKind[], actual: number | undefined, end: 0 | 1): number {
  let found = end === 0 ? Number.POSITIVE_INFINITY : 0;
  for (const kind of kinds) {
    const next = latchEnd(kind, actual, end);
    if (end === 0 ? next < found : next > found) found = next;
  }
  return found;
}

function frameTerm(values: StrengthValues, end: 0 | 1): number {
  const { frameMaterial, frameGrouted } = values;
  const grout = frameGrouted === true || (frameGrouted === undefined && end === 1) ? groutAddsLbf : 0;
  if (frameMaterial === undefined)
    return end === 0 ? anyFrame[0] : Math.max(anyFrame[1], frameLbf.hollowMetal[1] + grout);
  return frameLbf[frameMaterial][end] + (frameMaterial === 'hollowMetal' ? grout : 0);
}

function doorEdgeTerm(values: StrengthValues, end: 0 | 1): number {
  return (values.leafMaterial === undefined ? anyEdge : doorEdgeLbf[values.leafMaterial])[end];
}

/** The weakest link, as numbers only; fast, because it is asked for every candidate of every opening. */
export function limitingStrength(id: DeviceId, values: StrengthValues): LimitingStrength {
  let lowest = device(id).strengthLbf;
  let limitedBy: MemberId = 'device';
  const latch = latchTerm(id, values, 0);
  if (latch < lowest) {
    lowest = latch;
    limitedBy = 'latch';
  }
  const frame = frameTerm(values, 0);
  if (frame < lowest) {
    lowest = frame;
    limitedBy = 'frame';
  }
  const edge = doorEdgeTerm(values, 0);
  if (edge < lowest) {
    lowest = edge;
    limitedBy = 'doorEdge';
  }
  const highest = Math.min(
    device(id).strengthLbf,
    latchTerm(id, values, 1),
    frameTerm(values, 1),
    doorEdgeTerm(values, 1),
  );
  return { lbf: qty(lowest, 'lbf'), highestLbf: qty(highest, 'lbf'), limitedBy };
}

function member(id: MemberId, lowest: number, highest: number, says: string): StrengthMember {
  return {
    id,
    name: memberNames[id],
    lowestLbf: qty(lowest, 'lbf'),
    highestLbf: qty(highest, 'lbf'),
    says,
    source: 'practice',
  };
}

function latchSays(values: StrengthValues): string {
  const { latch, latchProjectionIn: actual } = values;
  if (latch === 'pushPull' || latch === 'roller')
    return 'There is no latch on the leaf for the device to work with.';
  if (actual === undefined) return 'Latch engagement is not measured: from 1/4 in to its full projection.';
  if (actual < leastEngagementIn) return `Only ${actual} in of latch engagement: it will not hold.`;
  if (latch === undefined) return 'The kind of latch is not surveyed.';
  const rated = latchFigures[latch]?.ratedProjectionIn;
  if (rated !== undefined && actual < rated)
    return `${actual} in of a ${rated} in latch engages, so its force counts in that proportion.`;
  return 'The latch engages with its full projection.';
}

/** Every member with its figure and why, for the page that explains the answer. */
export function strengthMembers(id: DeviceId, values: StrengthValues): StrengthExplained {
  const own = device(id).strengthLbf;
  const members: StrengthMember[] = [member('device', own, own, `${device(id).name}, default figure.`)];
  const latch = latchTerm(id, values, 0);
  if (Number.isFinite(latch))
    members.push(member('latch', latch, latchTerm(id, values, 1), latchSays(values)));
  const frameSays =
    values.frameMaterial === undefined
      ? 'The frame is not surveyed.'
      : values.frameMaterial === 'wood'
        ? 'Wood jamb: short screws into the jamb, up to 3 in screws into the stud.'
        : values.frameMaterial === 'hollowMetal' && values.frameGrouted === undefined
          ? 'Steel frame, 16 gauge; whether it is grouted is not surveyed.'
          : 'Default figure for this frame.';
  members.push(member('frame', frameTerm(values, 0), frameTerm(values, 1), frameSays));
  const edgeSays =
    values.leafMaterial === undefined ? 'The leaf is not surveyed.' : 'Default figure for this leaf.';
  members.push(member('doorEdge', doorEdgeTerm(values, 0), doorEdgeTerm(values, 1), edgeSays));
  return { ...limitingStrength(id, values), members, willNotHold: latch === 0 };
}
