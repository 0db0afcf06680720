import { under } from '../../codes/sections.ts';
import { all, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R13 = defineRule({
  id: 'R-13',
  title: 'A magnet armed after hours is not a key lock',
  family: 'foundations',
  book: 'ibc',
  cites: [under('locksAndLatches'), under('sensorRelease'), under('hardwareRelease')],
  confidence: 'secondary',
  why: 'The key-lock case trusts a person who turns a key and sees who is inside; a time clock that arms a lock sees no one.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(yes('isEgress'), yes('wishAfterHoursMagnet')),
      of: { family: ['magnet', 'bolt'], not: { release: ['sensor', 'doorSwitch'] } },
      says: 'A magnet or electric bolt armed after hours needs a full exit sensor set or a switch in the door hardware; the key-lock case of the main door does not cover it.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: all(yes('isEgress'), yes('wishAfterHoursMagnet')),
      of: { release: ['sensor', 'doorSwitch'] },
      says: 'The release on the egress side must work at all hours, even while the building is presumed empty.',
    },
  ],
});
