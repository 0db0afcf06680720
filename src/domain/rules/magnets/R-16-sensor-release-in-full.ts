import { under } from '../../codes/sections.ts';
import { all, any, ibc, nfpa101, no, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R16 = defineRule({
  id: 'R-16',
  title: 'Sensor release is a complete set',
  family: 'magnets',
  book: 'ibc',
  cites: [under('sensorRelease'), under('sensorReleaseNfpa')],
  confidence: 'secondary',
  note: 'Unlocking on loss of the sensor’s own power and the hold until reset: from general knowledge. Emergency lighting: not among the items of 2018, which were read; in 2021 and 2024 second-hand; beside NFPA 101 from general knowledge. Doors that need panic hardware: R-18 and R-124. That sensor and button may both fail is not among the items (2018 read, later editions second-hand), so where no alarm cuts lock power it is told as serious and forbids nothing.',
  why: 'A lock without mechanical egress is allowed only when every part of the arrangement is provided.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: yes('isEgress'),
      of: { release: ['sensor'] },
      items: ['exitSensor', 'pushToExit', 'signPushToExit', 'powerLossRelease', 'listedLock'],
      says: 'The sensor on the egress side unlocks also on loss of its own power or signal; the button is 40 to 48 in high within 5 ft of the door, breaks lock power directly and holds it off at least 30 s; loss of lock power unlocks.',
    },
    {
      key: 'b',
      effect: 'require',
      when: all(yes('isEgress'), yes('fireAlarm')),
      of: { release: ['sensor'] },
      items: ['fireAlarmRelease', 'overrideReset'],
      says: 'The fire alarm unlocks it and it stays unlocked until the alarm is reset by hand.',
    },
    {
      key: 'c',
      effect: 'require',
      when: all(yes('isEgress'), any(yes('sprinklered'), yes('detectionThroughout'))),
      of: { release: ['sensor'] },
      items: ['detectionRelease', 'overrideReset'],
      says: 'Sprinkler flow and automatic detection unlock it and it stays unlocked until they are reset.',
    },
    {
      key: 'd',
      effect: 'permit',
      when: all(yes('isEgress'), no('fireAlarm'), no('sprinklered'), no('detectionThroughout')),
      of: { release: ['sensor'] },
      says: 'Without fire alarm, sprinklers or detection in the building the sensor set may still be used; there is nothing to connect it to.',
    },
    {
      key: 'e',
      effect: 'signOff',
      grade: 'must',
      when: all(yes('isEgress'), nfpa101()),
      of: { release: ['sensor'] },
      says: 'NFPA 101 allows sensor release only where the occupancy chapter says so; a reviewer checks it.',
    },
    {
      key: 'f',
      effect: 'require',
      when: all(yes('isEgress'), not(all(ibc({ to: 2018 }), not(nfpa101())))),
      of: { release: ['sensor'] },
      items: ['emergencyLighting'],
      says: 'The egress side of the door has emergency lighting.',
    },
  ],
});
