import type { FactKey } from '../model/fields.ts';

/**
 * What is assumed when a survey says nothing: only that an owner who voiced no special wish has none. Each one
 * shows as an assumption with its source. Nothing about fire, egress, stairs or hardware is ever assumed here.
 */
export const silentDefaults: readonly {
  readonly fact: FactKey;
  readonly value: false;
  readonly from: string;
}[] = (
  [
    'wishDelayedEgress',
    'wishDelay30s',
    'wishNoDelaySign',
    'wishControlledEgress',
    'wishInterlock',
    'wishScheduledUnlock',
    'wishLockdown',
    'wishAfterHoursMagnet',
    'wishUnlockOnAlarm',
    'wishKeyLock',
    'wishGlassBareLook',
    'barricadeDevice',
  ] as const
).map((fact) => ({ fact, value: false, from: 'no such wish was recorded' }));
