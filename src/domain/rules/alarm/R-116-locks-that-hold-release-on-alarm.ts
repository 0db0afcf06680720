import { text, under } from '../../codes/sections.ts';
import { all, nfpa72, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { releaseExcuse } from '../special/conditions.ts';
import { alarmMayBeThere, somethingDetects } from './given.ts';

export const R116 = defineRule({
  id: 'R-116',
  title: 'Locks that hold people in are tied to fire detection as their section requires',
  family: 'alarm',
  book: 'nfpa72',
  cites: [
    text('nfpa72', '21.9 (2010 and later)', 'Electrically locked doors'),
    under('sensorRelease'),
    under('delayedEgress'),
    under('controlledEgress'),
    under('elevatorLobby'),
    under('hardwareRelease'),
  ],
  confidence: 'read',
  note: 'What ends a sensor lock or an elevator-lobby lock stands in R-16 and R-95. The 2010 text was read. That later editions only point to the other codes is from general knowledge.',
  why: 'A lock that prevents egress must release on its own when the building detects a fire.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: all(yes('isEgress'), somethingDetects),
      of: { release: ['delayed'] },
      items: ['detectionRelease'],
      says: 'Sprinkler flow and automatic detection, as far as the building has them, end the delay; a manual pull station need not.',
    },
    {
      key: 'b',
      effect: 'require',
      when: all(yes('isEgress'), somethingDetects, not(releaseExcuse)),
      of: { release: ['controlled'] },
      items: ['detectionRelease'],
      says: 'Sprinkler flow and automatic detection end the controlled lock’s hold; only the treatment areas that the code names are excused.',
    },
    {
      key: 'f',
      effect: 'require',
      when: all(yes('isEgress'), somethingDetects, alarmMayBeThere),
      of: { release: ['delayed'] },
      items: ['fireAlarmRelease'],
      says: 'The fire alarm system carries the signal that ends the delay.',
    },
    {
      key: 'g',
      effect: 'require',
      when: all(yes('isEgress'), somethingDetects, alarmMayBeThere, not(releaseExcuse)),
      of: { release: ['controlled'] },
      items: ['fireAlarmRelease'],
      says: 'The fire alarm system carries the signal that ends the controlled lock’s hold.',
    },
    {
      key: 'c',
      effect: 'require',
      when: all(yes('isEgress'), yes('fireAlarm'), nfpa72({ to: 2010 })),
      of: { release: ['doorSwitch'] },
      items: ['fireAlarmRelease'],
      says: 'NFPA 72-2010 requires a lock that prevents egress to be tied to the fire alarm, even one released by its own bar.',
    },
    {
      key: 'd',
      effect: 'signOff',
      grade: 'must',
      when: all(yes('isEgress'), yes('fireAlarm')),
      of: { release: ['doorSwitch'] },
      says: 'Whether a lock released by the switch in its bar must also be tied to the fire alarm is for a reviewer to settle with the authority.',
    },
    {
      key: 'e',
      effect: 'permit',
      when: all(yes('isEgress'), not(nfpa72({ to: 2010 }))),
      of: { release: ['doorSwitch'] },
      says: 'The model building codes do not themselves require fire-alarm release for a lock released by its own bar or lever.',
    },
  ],
});
