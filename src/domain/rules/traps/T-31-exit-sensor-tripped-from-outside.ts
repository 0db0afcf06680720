import { text } from '../../codes/sections.ts';
import { any, is, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const T31 = defineRule({
  id: 'T-31',
  title: 'Exit sensor tripped from outside',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'secondary',
  why: 'A motion sensor unlocks for a paper pushed under the door or for somebody who only walks by.',
  clauses: [
    {
      effect: 'caution',
      when: any(yes('sensorTrippable'), is('securityNeed', 'high', 'critical')),
      of: { release: ['sensor'] },
      says: 'The exit sensor unlocks for whatever moves in its field: aim it at the door hand only, close gaps, and do not make up for it by leaving the sensor out.',
    },
  ],
  cases: cases(
    ['gap under the door', { sensorTrippable: true }, 'yes', { on: 'magnet/safe/sensor' }],
    ['high security', { sensorTrippable: false, securityNeed: 'high' }, 'yes', { on: 'magnet/safe/sensor' }],
    [
      'critical security',
      { sensorTrippable: false, securityNeed: 'critical' },
      'yes',
      { on: 'magnet/safe/sensor' },
    ],
    [
      'tight door, low need',
      { sensorTrippable: false, securityNeed: 'low' },
      'no',
      { on: 'magnet/safe/sensor' },
    ],
    ['not surveyed', { securityNeed: 'low' }, 'unknown', { on: 'magnet/safe/sensor' }],
    ['no sensor', { sensorTrippable: true }, 'no', { on: 'magnet/safe/doorSwitch' }],
  ),
});
