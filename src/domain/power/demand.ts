import type { Decision } from '../decide/decision.ts';
import { valueIn } from '../logic/slots.ts';
import { devicesOn } from '../hardware/inPlace.ts';
import { partsOf } from '../hardware/parts.ts';
import type { Device } from '../devices/devices.ts';
import { type ItemId, itemOf } from '../devices/items.ts';
import type { Opening } from '../model/project.ts';
import { conductorsOverHinge, type TransferGauge } from '../electrical/transfer.ts';
import { type Cable, cablesOf } from './cables.ts';
import { besideLock, isLoadClass, type LoadClassId, loadClasses } from './loadClasses.ts';
import { type Book, type Rating, ratingOf } from './productBook.ts';

/** One kind of thing that is fed at an opening. */
export interface Load {
  readonly of: LoadClassId;
  readonly name: string;
  readonly count: number;
  /** Undefined where its volts are not known, or it is not made for them. */
  readonly rating: Rating | undefined;
  /** All day; only while the door is released; or only while a bolt moves. */
  readonly when: 'standing' | 'release' | 'moving';
}

/** What an opening asks of its supply. Amperes of the whole opening. */
export interface Demand {
  readonly id: string;
  readonly mark: string;
  readonly floorId: string | null;
  readonly fromSpaceId: string | null;
  readonly toSpaceId: string | null;
  readonly volts: 12 | 24 | null;
  readonly loads: readonly Load[];
  readonly standingA: number;
  readonly releaseA: number;
  /** What the largest start takes beyond steady, one device at a time. */
  readonly peakExtraA: number;
  /** The lock alone, one device: what its pair of conductors carries. */
  readonly lock: Load | undefined;
  readonly failSafe: boolean;
  /** Held unlocked for hours on a schedule. */
  readonly scheduled: boolean;
  /** Its caution asks for a supply of its own beside the door. */
  readonly ownSupply: boolean;
  readonly source: 'supply' | 'fireAlarmPanel' | 'poe';
  readonly readers: number;
  readonly standbyHours: number | null;
  readonly surveyedFt: number | null;
  readonly transfer: Transfer | undefined;
  readonly cables: readonly Cable[];
  /** New raceway at the frame. */
  readonly raceway: boolean;
  /** Left out of every sum, and why; empty where all is counted. */
  readonly notCounted: readonly string[];
}

/** A transfer across the hinge line: what crosses it, and the wire its power pair is made of. */
export interface Transfer {
  readonly count: number;
  readonly conductors: number;
  readonly gauge: TransferGauge;
  readonly lengthFt: number;
}

const transferFt = 2;

/** Doors of one controller; each carries its share of it. */
export const doorsPerController = 2;

/** Undefined where nothing is chosen or what is chosen is fed by nobody. */
export function demandOf(opening: Opening, decision: Decision, book: Book): Demand | undefined {
  const { chosen, slots } = decision;
  if (!chosen) return undefined;
  const parts = partsOf(decision);
  const quantity = new Map(parts.map((part) => [part.item, part.quantity]));
  const volts = readVolts(valueIn(slots, 'supplyVolts'));
  const { deviceId, device, failMode } = chosen.candidate;
  const loads: Load[] = [];
  const add = (of: LoadClassId, count: number, when: Load['when']) => {
    const rating = volts === null ? undefined : ratingOf(of, volts, book);
    const name = rating?.name ?? loadClasses.get(of)?.name ?? of;
    loads.push({ of, name, count, rating, when });
  };
  const wired = device.wired && isLoadClass(deviceId);
  if (wired) add(deviceId, devicesOn(decision), whenOf(device, failMode));
  const counts = new Map<LoadClassId, number>();
  for (const [item, count] of quantity) {
    const { load: of } = itemOf(item);
    // Sequence and control are one relay.
    if (of) counts.set(of, of === 'operatorRelay' ? 1 : (counts.get(of) ?? 0) + count);
  }
  for (const of of besideLock) if (counts.has(of)) add(of, counts.get(of) ?? 0, 'standing');
  if (quantity.has('accessController')) add('controller', 1 / doorsPerController, 'standing');
  if (loads.length === 0) return undefined;
  const lock = wired ? loads[0] : undefined;
  const sum = (when: (load: Load) => boolean) =>
    loads.reduce((total, one) => total + (when(one) ? (one.rating?.steadyA ?? 0) * one.count : 0), 0);
  return {
    id: opening.id,
    mark: opening.mark,
    floorId: opening.floorId,
    fromSpaceId: opening.fromSpaceId,
    toSpaceId: opening.toSpaceId,
    volts,
    loads,
    standingA: sum(({ when }) => when === 'standing'),
    releaseA: sum(({ when }) => when !== 'standing'),
    peakExtraA: Math.max(0, ...loads.map(({ rating }) => (rating ? rating.peakA - rating.steadyA : 0))),
    lock,
    failSafe: wired && failMode === 'safe',
    scheduled: valueIn(slots, 'wishScheduledUnlock') === true,
    ownSupply: device.hardStart === true,
    source: sourceOf(valueIn(slots, 'lockPowerSource')),
    readers: counts.get('reader') ?? 0,
    standbyHours: valueIn(slots, 'standbyHours') ?? null,
    surveyedFt: valueIn(slots, 'distanceToSupplyFt') ?? null,
    transfer: transferOf(quantity, device, wired),
    cables: cablesOf(quantity, wired ? devicesOn(decision) : 0),
    raceway: quantity.has('frameRaceway'),
    notCounted: notCountedOf(loads, volts),
  };
}

function readVolts(value: unknown): 12 | 24 | null {
  return value === '12' ? 12 : value === '24' ? 24 : null;
}

/** A motor draws while it moves; a coil that fails safe all the time; any other while the door is released. */
function whenOf({ motorBolt }: Device, failMode: string): Load['when'] {
  if (motorBolt) return 'moving';
  return failMode === 'safe' ? 'standing' : 'release';
}

function sourceOf(source: unknown): Demand['source'] {
  return source === 'fireAlarmPanel' || source === 'poe' ? source : 'supply';
}

function transferOf(
  quantity: ReadonlyMap<ItemId, number>,
  { harnessConductors, hardStart }: Device,
  wired: boolean,
): Transfer | undefined {
  const count = quantity.get('powerTransfer') ?? 0;
  if (count === 0 || !wired) return undefined;
  const counted = conductorsOverHinge({
    requestToExit: quantity.has('requestToExit'),
    latchMonitor: false,
    doorPosition: false,
    reader: 'none',
  });
  return {
    count,
    conductors: Math.max(harnessConductors ?? 0, counted),
    gauge: hardStart ? 18 : 24,
    lengthFt: transferFt,
  };
}

function notCountedOf(loads: readonly Load[], volts: 12 | 24 | null): readonly string[] {
  if (volts === null) return ['the lock supply voltage is not surveyed'];
  return loads
    .filter(({ rating }) => rating === undefined)
    .map(({ name }) => `${name} is not made for ${volts} V`);
}
