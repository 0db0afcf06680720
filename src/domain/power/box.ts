import { class2Limits } from '../electrical/class2.ts';
import { supplyShare } from '../electrical/supply.ts';
import type { Supply } from '../model/power.ts';
import { qty } from '../units/quantity.ts';
import { roundUp } from '../units/told.ts';
import { type Demand, doorsPerController } from './demand.ts';

/** A lead-acid set is charged above its nominal volts: 27.6 V of a 24 V set. Read with the Class 2 limits. */
const floatShare = 1.15;

/** What one output of a Class 2 supply may carry, at the volts of a charging battery; undefined without a limit. */
export function outputLimit({
  class2,
  volts,
}: Pick<Supply, 'class2' | 'volts'>): { readonly steadyA: number; readonly peakA: number } | undefined {
  if (!class2) return undefined;
  const limits = class2Limits(qty(volts * floatShare, 'V'));
  return limits.ok ? { steadyA: limits.current, peakA: limits.anyLoad } : undefined;
}

/** What hangs on one supply, added up. */
export interface Filled {
  readonly demands: Demand[];
  standingA: number;
  /** Everything that may be released together: a schedule releases all of it. */
  releaseA: number;
  /** The largest start beyond steady; two do not start in the same instant. */
  peakExtraA: number;
  readers: number;
  /** One of them asks for a supply of its own. */
  alone: boolean;
}

export function emptyBox(): Filled {
  return { demands: [], standingA: 0, releaseA: 0, peakExtraA: 0, readers: 0, alone: false };
}

export function put(box: Filled, demand: Demand): void {
  box.demands.push(demand);
  box.standingA += demand.standingA;
  box.releaseA += demand.releaseA;
  box.peakExtraA = Math.max(box.peakExtraA, demand.peakExtraA);
  box.readers += demand.readers;
  box.alone ||= demand.ownSupply;
}

export const continuousA = (box: Pick<Filled, 'standingA' | 'releaseA'>) => box.standingA + box.releaseA;

/** Each lock has an output, and each controller one. */
export function outputsUsed(doors: number): number {
  return doors + roundUp(doors / doorsPerController);
}

/** What an opening’s lock puts on its own output, A: all devices of it, and the largest start on top. */
export function onOutput(demand: Demand): { readonly steadyA: number; readonly peakA: number } {
  const { lock } = demand;
  const steadyA = (lock?.rating?.steadyA ?? 0) * (lock?.count ?? 0);
  return { steadyA, peakA: Math.max(steadyA, (lock?.rating?.peakA ?? 0) * (lock?.count ?? 0)) };
}

export type Limit = 'load' | 'peak' | 'outputs' | 'class2' | 'alone' | 'volts' | 'current';

/** Smallest difference that is electricity and not arithmetic. */
const hair = 1e-9;

/** Why a demand cannot join what hangs on a supply already; undefined where it can. */
export function limitAgainst(supply: Supply, box: Filled, demand: Demand): Limit | undefined {
  if (demand.volts !== supply.volts) return 'volts';
  if (supply.current !== 'dc') return 'current';
  if (box.demands.length > 0 && (box.alone || demand.ownSupply)) return 'alone';
  const amps = continuousA(box) + demand.standingA + demand.releaseA;
  if (amps > supply.amps * supplyShare + hair) return 'load';
  // The start lasts a moment: it is held against the whole rating, or the maker’s own for a peak.
  const peak = amps + Math.max(box.peakExtraA, demand.peakExtraA);
  if (peak > (supply.peakAmps ?? supply.amps) + hair) return 'peak';
  if (outputsUsed(box.demands.length + 1) > supply.outputs) return 'outputs';
  const limit = outputLimit(supply);
  const { steadyA, peakA } = onOutput(demand);
  if (limit && (steadyA > limit.steadyA + hair || peakA > limit.peakA + hair)) return 'class2';
  return undefined;
}
