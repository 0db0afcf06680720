import { cases } from '../rule.ts';

export const B56Cases = cases(
  ['voice without alarm', { voiceAlarm: true, fireAlarm: false }, 'yes', { does: 'refuse fireAlarm' }],
  ['both', { voiceAlarm: true, fireAlarm: true }, 'no'],
  ['neither', { voiceAlarm: false, fireAlarm: false }, 'no'],
  ['alarm not surveyed', { voiceAlarm: true }, 'unknown'],
);
