import { refuse, type Told } from '../units/told.ts';

export interface DelaySetting {
  /** Seconds a push must last before the count starts, 0 to 3. */
  readonly nuisanceS: number;
  /** Seconds of the count: 15, or 30 where approved. */
  readonly delayS: number;
  readonly approved30: boolean;
}
export type DelayState = Told<{ state: 'locked' | 'counting' | 'open' }>;

/**
 * State of a delayed-egress lock, seconds after a push began that lasted `pushedS`. A push shorter than the
 * nuisance time leaves it locked; a longer one starts a count that nothing stops. Alarm and power loss open it at
 * once and are not modeled. Source: IBC 1010.2.13 (2021), ANSI/BHMA A156.24: 15 s, 30 s with approval, 3 s.
 */
export function delayedEgress(setting: DelaySetting, pushedS: number, afterS: number): DelayState {
  if (setting.nuisanceS < 0 || setting.nuisanceS > 3) return refuse('The nuisance time may be 0 to 3 s.');
  if (setting.delayS > 30 || setting.delayS <= 0)
    return refuse('The delay may be 15 s, or 30 s with approval.');
  if (setting.delayS > 15 && !setting.approved30)
    return refuse('A delay over 15 s needs the authority’s approval.');
  if (pushedS < setting.nuisanceS || afterS < setting.nuisanceS) return { ok: true, state: 'locked' };
  return { ok: true, state: afterS >= setting.nuisanceS + setting.delayS ? 'open' : 'counting' };
}
