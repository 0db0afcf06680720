import { under } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';
import { magnetDevices, oneOfEachMagnet } from './magnets.ts';

const room = { egressRole: 'exitAccess' } as const;

export const R15 = defineRule({
  id: 'R-15',
  title: 'A magnet comes with one full release set',
  family: 'magnets',
  book: 'ibc',
  cites: [
    under('sensorRelease'),
    under('hardwareRelease'),
    under('delayedEgress'),
    under('controlledEgress'),
    under('elevatorLobby'),
  ],
  confidence: 'secondary',
  note: 'Door-hardware release was read; the other sets are second-hand. Sets may not be mixed.',
  why: 'No lever retracts a magnet, so only a complete arrangement from the code lets people out.',
  clauses: [
    {
      key: 'a',
      effect: 'signOff',
      grade: 'must',
      when: yes('isEgress'),
      of: { device: magnetDevices },
      says: 'A magnet holds people in until something releases it; a reviewer signs that one complete release set is provided.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: yes('isEgress'),
      of: { family: ['magnet'], release: ['none', 'alarmOnly', 'buttonOnly', 'credentialOut'] },
      says: 'This magnet has none of the release sets in the code: sensor, door hardware, delayed, controlled or elevator lobby.',
    },
  ],
  cases: cases(
    ...onEach(oneOfEachMagnet, 'room door', room, 'yes', { clause: 'a', does: 'signOff must' }),
    ['cabinet', { egressRole: 'noOccupiedSpace' }, 'no', { clause: 'a', on: 'magnet/safe/sensor' }],
    ['role not known', {}, 'unknown', { clause: 'a', on: 'magnet/safe/sensor' }],
    ...onEach(
      ['mortiseLock/secure/free', 'boltMotor/safe/sensor', 'delayedExitDevice/safe/delayed'],
      'no magnet',
      room,
      'no',
      'a',
    ),
    ...onEach(
      [
        'magnet/safe/none',
        'magnet/safe/alarmOnly',
        'shearMagnet/safe/buttonOnly',
        'magnet/safe/credentialOut',
      ],
      'no set',
      room,
      'yes',
      { clause: 'b', does: 'prohibit' },
    ),
    ['cabinet', { egressRole: 'noOccupiedSpace' }, 'no', { clause: 'b', on: 'magnet/safe/none' }],
    ['role not known', {}, 'unknown', { clause: 'b', on: 'magnet/safe/none' }],
    ...onEach(
      [
        'magnet/safe/sensor',
        'magnet/safe/doorSwitch',
        'magnet/safe/controlled',
        'magnet/safe/lobby',
        'boltMotor/safe/none',
      ],
      'a set, or no magnet',
      room,
      'no',
      'b',
    ),
  ),
});
