import { text, under as cite } from '../../codes/sections.ts';
import { all, is, no, yes } from '../../logic/condition.ts';
import { type CaseRow, cases, defineRule } from '../rule.ts';

const nothingTells = all(no('fireAlarm'), no('sprinklered'), no('detectionThroughout'));
const bare = { fireAlarm: false, sprinklered: false, detectionThroughout: false } as const;

export const B89 = defineRule({
  id: 'B-89',
  title: 'A release on fire alarm in a building without one',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), cite('sensorRelease')],
  confidence: 'project',

  why: 'A lock that waits for an alarm that cannot come keeps people in.',
  clauses: [
    {
      key: 'a',
      effect: 'finding',
      field: 'existingArrangement',
      severity: 'warn',
      when: all(is('existingArrangement', 'magnetFullSet', 'magnetAlarmOnly'), nothingTells),
      says: 'The magnet is entered as released by the fire alarm, and the building has no fire alarm, sprinklers or detection that could release it; find out what it is wired to.',
    },
    {
      key: 'b',
      effect: 'finding',
      field: 'wishUnlockOnAlarm',
      severity: 'warn',
      when: all(yes('wishUnlockOnAlarm'), nothingTells),
      says: 'The outside is to unlock on fire alarm, and the building has no fire alarm, sprinklers or detection; withdraw the request or correct the building facts.',
    },
  ],
  cases: cases(
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
  ),
});
