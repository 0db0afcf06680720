import { under } from '../../codes/sections.ts';
import { all, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

const asked = { egressRole: 'exteriorExit', wishAfterHoursMagnet: true } as const;

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
  cases: cases(
    ...onEach(
      [
        'magnet/safe/alarmOnly',
        'shearMagnet/safe/none',
        'magnet/safe/buttonOnly',
        'boltMotor/safe/credentialOut',
        'magnet/safe/controlled',
      ],
      'armed after hours',
      asked,
      'yes',
      { clause: 'a', does: 'prohibit' },
    ),
    [
      'not asked for',
      { ...asked, wishAfterHoursMagnet: false },
      'no',
      { clause: 'a', on: 'magnet/safe/alarmOnly' },
    ],
    [
      'wish not known',
      { egressRole: 'exteriorExit' },
      'unknown',
      { clause: 'a', on: 'magnet/safe/alarmOnly' },
    ],
    [
      'cabinet',
      { ...asked, egressRole: 'noOccupiedSpace' },
      'no',
      { clause: 'a', on: 'magnet/safe/alarmOnly' },
    ],
    ...onEach(
      [
        'magnet/safe/sensor',
        'magnet/safe/doorSwitch',
        'mortiseLock/secure/credentialOut',
        'mechanicalLock/none/keyInside',
      ],
      'full set, or no magnet',
      asked,
      'no',
      'a',
    ),
    ...onEach(
      ['magnet/safe/sensor', 'magnet/safe/doorSwitch', 'boltMotor/safe/sensor'],
      'full set',
      asked,
      'yes',
      { clause: 'b', does: 'caution' },
    ),
    [
      'not asked for',
      { ...asked, wishAfterHoursMagnet: false },
      'no',
      { clause: 'b', on: 'magnet/safe/sensor' },
    ],
    ['wish not known', { egressRole: 'exteriorExit' }, 'unknown', { clause: 'b', on: 'magnet/safe/sensor' }],
    ['cabinet', { ...asked, egressRole: 'noOccupiedSpace' }, 'no', { clause: 'b', on: 'magnet/safe/sensor' }],
    ...onEach(['magnet/safe/alarmOnly', 'mortiseLock/secure/free'], 'not meant', asked, 'no', 'b'),
  ),
});
