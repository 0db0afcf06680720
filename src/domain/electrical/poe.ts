import { type Qty, qty } from '../units/quantity.ts';

/** Power at the switch port and at the device, W. Source: IEEE 802.3af (0–3), 802.3at (4), 802.3bt (5–8); read. */
export const poeClasses = {
  0: { portW: 15.4, deviceW: 12.95 },
  1: { portW: 4, deviceW: 3.84 },
  2: { portW: 7, deviceW: 6.49 },
  3: { portW: 15.4, deviceW: 12.95 },
  4: { portW: 30, deviceW: 25.5 },
  5: { portW: 45, deviceW: 40 },
  6: { portW: 60, deviceW: 51 },
  7: { portW: 75, deviceW: 62 },
  8: { portW: 90, deviceW: 71.3 },
} as const;

/** Longest channel, m. IEEE 802.3, from general knowledge. */
export const poeChannel = qty(100, 'm');

/** Amperes a power budget gives: W ÷ V. */
export function budgetCurrent(budget: Qty<'W'>, volts: Qty<'V'>): Qty<'A'> {
  return qty(budget / volts, 'A');
}

/**
 * Whether loads fit the current that the controller passes on after feeding itself; its data sheet names that figure.
 * Exactly at the budget passes.
 */
export function fitsBudget(
  loads: readonly Qty<'A'>[],
  budget: Qty<'A'>,
): { readonly total: Qty<'A'>; readonly fits: boolean } {
  const total = loads.reduce((sum, one) => sum + one, 0);
  return { total: qty(total, 'A'), fits: total <= budget + 1e-9 };
}
