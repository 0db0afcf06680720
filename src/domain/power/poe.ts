import { budgetCurrent, fitsBudget } from '../electrical/poe.ts';
import { qty } from '../units/quantity.ts';
import type { Demand } from './demand.ts';

/**
 * What a network-fed door controller passes on after feeding itself: the least of four makers’ figures for each kind of
 * port, read. The data sheet of the controller goes before it.
 */
export const poeLeftW = { af: 3, at: 9 } as const;
export type PoePort = keyof typeof poeLeftW;
export interface PoeState {
  readonly demand: Demand;
  /** All that the controller must pass on at once: standing, released, and the start of the lock. */
  readonly neededA: number;
  readonly ports: Readonly<Record<PoePort, { readonly leftA: number; readonly fits: boolean }>>;
  /** The smaller port that carries it; null: neither. */
  readonly port: PoePort | null;
}

/** The controller feeds itself from the port, so its own share is left out here. */
export function poeStateOf(demand: Demand): PoeState | undefined {
  const { volts, loads } = demand;
  if (demand.source !== 'poe' || volts === null) return undefined;
  const fed = loads.filter(({ of }) => of !== 'controller');
  const amps = fed.map(({ rating, count }) => qty((rating?.steadyA ?? 0) * count, 'A'));
  const all = [...amps, qty(demand.peakExtraA, 'A')];
  const at = (port: PoePort) => {
    const leftA = budgetCurrent(qty(poeLeftW[port], 'W'), qty(volts, 'V'));
    return { leftA, fits: fitsBudget(all, leftA).fits };
  };
  const ports = { af: at('af'), at: at('at') };
  return {
    demand,
    neededA: all.reduce((sum, one) => sum + one, 0),
    ports,
    port: ports.af.fits ? 'af' : ports.at.fits ? 'at' : null,
  };
}
