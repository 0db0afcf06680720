import { type CaseRow, cases } from '../rule.ts';

const bare = { fireAlarm: false, sprinklered: false, detectionThroughout: false } as const;

export const B89Cases = cases(
  ...(['magnetFullSet', 'magnetAlarmOnly'] as const).map(
    (existingArrangement): CaseRow => [
      'magnet, nothing to release it',
      { ...bare, existingArrangement },
      'yes',
      { clause: 'a', does: 'warn existingArrangement' },
    ],
  ),
  ['magnet with a button only', { ...bare, existingArrangement: 'magnetNoSensor' }, 'no', { clause: 'a' }],
  ['magnet not looked at', bare, 'unknown', { clause: 'a' }],
  [
    'outside to unlock',
    { ...bare, wishUnlockOnAlarm: true },
    'yes',
    { clause: 'b', does: 'warn wishUnlockOnAlarm' },
  ],
  ['no such wish', { ...bare, wishUnlockOnAlarm: false }, 'no', { clause: 'b' }],
  ['alarm not known', { wishUnlockOnAlarm: true }, 'unknown', { clause: 'b' }],
  ...(['fireAlarm', 'sprinklered', 'detectionThroughout'] as const).flatMap((there): readonly CaseRow[] => [
    [
      `${there} is there`,
      { ...bare, existingArrangement: 'magnetFullSet', [there]: true },
      'no',
      { clause: 'a' },
    ],
    [`${there} is there`, { ...bare, wishUnlockOnAlarm: true, [there]: true }, 'no', { clause: 'b' }],
  ]),
);
