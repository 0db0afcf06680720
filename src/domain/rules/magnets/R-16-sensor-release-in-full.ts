import { under } from '../../codes/sections.ts';
import { all, ibc, nfpa101, any, no, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const R16 = defineRule({
  id: 'R-16',
  title: 'Sensor release comes as a full set',
  family: 'magnets',
  book: 'ibc',
  cites: [under('sensorRelease'), under('sensorReleaseNfpa')],
  confidence: 'secondary',
  note: 'Emergency lighting on the egress side: from general knowledge, sure for 2021 and 2024.',
  why: 'A lock without mechanical exit is lawful only when every part of the arrangement is there.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: all(any(ibc(), nfpa101()), yes('isEgress')),
      of: { release: ['sensor'] },
      items: ['exitSensor', 'pushToExit', 'signPushToExit', 'powerLossRelease', 'emergencyLighting', 'listedLock', 'overrideReset'],
      says: 'The sensor unlocks also on loss of its own power or signal; the button stands 40 to 48 in high within 5 ft of the door, breaks lock power directly and holds it off at least 30 s; loss of lock power unlocks.',
    },
    {
      key: 'b',
      effect: 'require',
      when: all(yes('isEgress'), any(yes('fireAlarm'), yes('sprinklered'), yes('detectionThroughout'))),
      of: { release: ['sensor'] },
      items: ['fireAlarmRelease', 'detectionRelease'],
      says: 'Fire alarm, sprinkler and detection unlock it and keep it unlocked until reset.',
    },
    {
      key: 'c',
      effect: 'permit',
      when: all(yes('isEgress'), no('fireAlarm'), no('sprinklered'), no('detectionThroughout')),
      of: { release: ['sensor'] },
      says: 'Without a fire alarm in the building the sensor set is still usable; there is nothing to connect to.',
    },
  ],
  cases: cases(
    ['office door, magnet with sensor', { egressRole: 'exitAccess' }, 'yes', { clause: 'a', on: 'magnet/safe/sensor' }],
    ['cabinet that nobody can enter', { egressRole: 'noOccupiedSpace' }, 'no', { clause: 'a', on: 'magnet/safe/sensor' }],
    ['egress role not known', {}, 'unknown', { clause: 'a', on: 'magnet/safe/sensor' }],
    ['neither code adopted', { egressRole: 'exitAccess' }, 'no', { clause: 'a', on: 'magnet/safe/sensor', basis: { ibc: null, nfpa101: null } }],
    ['a magnet released by the lever is another set', { egressRole: 'exitAccess' }, 'no', { clause: 'a', on: 'magnet/safe/doorSwitch' }],
    ['building with a fire alarm', { egressRole: 'exitAccess', fireAlarm: true }, 'yes', { clause: 'b', on: 'magnet/safe/sensor' }],
    ['building with sprinklers only', { egressRole: 'exitAccess', fireAlarm: false, sprinklered: true }, 'yes', { clause: 'b', on: 'magnet/safe/sensor' }],
    ['building with detection only', { egressRole: 'exitAccess', fireAlarm: false, sprinklered: false, detectionThroughout: true }, 'yes', { clause: 'b', on: 'magnet/safe/sensor' }],
    ['no fire protection at all', { egressRole: 'exitAccess', fireAlarm: false, sprinklered: false, detectionThroughout: false }, 'no', { clause: 'b', on: 'magnet/safe/sensor' }],
    ['fire protection not surveyed', { egressRole: 'exitAccess' }, 'unknown', { clause: 'b', on: 'magnet/safe/sensor' }],
    ['no fire protection at all: still usable', { egressRole: 'exitAccess', fireAlarm: false, sprinklered: false, detectionThroughout: false }, 'yes', { clause: 'c', on: 'magnet/safe/sensor' }],
    ['fire alarm there: no need to say so', { egressRole: 'exitAccess', fireAlarm: true }, 'no', { clause: 'c', on: 'magnet/safe/sensor' }],
    ['not surveyed', {}, 'unknown', { clause: 'c', on: 'magnet/safe/sensor' }],
  ),
});
