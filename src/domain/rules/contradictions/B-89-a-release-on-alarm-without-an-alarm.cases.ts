import { type CaseRow, cases } from '../rule.ts';

const bare = { fireAlarm: false, sprinklered: false, detectionThroughout: false } as const;
const full = { ...bare, existingArrangement: 'magnetFullSet' } as const;
const alarmOnly = { ...bare, existingArrangement: 'magnetAlarmOnly' } as const;
const wish = { ...bare, wishUnlockOnAlarm: true } as const;

export const B89Cases = cases(
  ['full set, nothing to release it', full, 'yes', { clause: 'a', does: 'warn existingArrangement' }],
  ['released by an alarm that is not there', alarmOnly, 'yes', { clause: 'a' }],
  ['magnet with a button only', { ...bare, existingArrangement: 'magnetNoSensor' }, 'no', { clause: 'a' }],
  ['magnet not looked at', bare, 'unknown', { clause: 'a' }],
  ['outside to unlock', wish, 'yes', { clause: 'b', does: 'warn wishUnlockOnAlarm' }],
  ['no such wish', { ...bare, wishUnlockOnAlarm: false }, 'no', { clause: 'b' }],
  ['alarm not known', { wishUnlockOnAlarm: true }, 'unknown', { clause: 'b' }],
  ...([full, alarmOnly] as const).map(
    (found): CaseRow => ['alarm system there', { ...found, fireAlarm: true }, 'no', { clause: 'a' }],
  ),
  ['alarm system there', { ...wish, fireAlarm: true }, 'no', { clause: 'b' }],
  // Flow or detectors can release a set; neither is a fire alarm that somebody wrote down.
  ...(['sprinklered', 'detectionThroughout'] as const).flatMap((there): readonly CaseRow[] => [
    [`full set, ${there}`, { ...full, [there]: true }, 'no', { clause: 'a' }],
    [`alarm only, ${there}`, { ...alarmOnly, [there]: true }, 'yes', { clause: 'a' }],
    [`outside to unlock, ${there}`, { ...wish, [there]: true }, 'yes', { clause: 'b' }],
  ]),
);
