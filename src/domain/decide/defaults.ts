import type { FactKey } from '../model/fields.ts';

/**
 * What is assumed when a survey says nothing: only that an owner who voiced no special wish has none. Each one
 * shows as an assumption with its source. Nothing about fire, egress, stairs or hardware is ever assumed here.
 */
export const silentDefaults: readonly {
  readonly fact: FactKey;
  readonly value: false | 'controlled';
  readonly from: string;
}[] = [
  { fact: 'control', value: 'controlled', from: 'nobody said that this opening is to be left alone' },
  ...(
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
  ).map((fact) => ({ fact, value: false as const, from: 'not requested' })),
];
