import { under } from '../../codes/sections.ts';
import { is, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

const stair = { egressRole: 'stairEntry' } as const;
const unlawful = [
  'magnet/safe/none',
  'magnet/safe/alarmOnly',
  'magnet/safe/buttonOnly',
  'magnet/safe/credentialOut',
  'magnet/safe/lobby',
  'mechanicalLock/none/keyInside',
];
const whole = [
  'magnet/safe/sensor',
  'magnet/safe/doorSwitch',
  'delayedExitDevice/safe/delayed',
  'magnet/safe/controlled',
  'batteryLock/asIs/clinical',
  'detentionLock/none/attended',
];

export const R60 = defineRule({
  id: 'R-60',
  title: 'Entry to the stair stays free',
  family: 'stairs',
  book: 'ibc',
  cites: [under('stairDoors'), under('freeEgressIbc'), under('stairDoorsNfpa')],
  confidence: 'secondary',
  why: 'The stair is the exit; a floor that cannot get into it has lost its exit.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: is('egressRole', 'stairEntry'),
      of: { release: ['none', 'alarmOnly', 'buttonOnly', 'credentialOut', 'keyInside', 'lobby'] },
      says: 'It keeps people on the floor from the stair, and no complete release arrangement stands in for the free lever.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: is('egressRole', 'stairEntry'),
      of: { release: ['sensor', 'doorSwitch', 'delayed', 'controlled', 'clinical', 'attended'] },
      says: 'It holds the door into the stair until something releases it: a reviewer confirms that the whole arrangement is there and that this use may have it.',
    },
    {
      key: 'c',
      effect: 'finding',
      field: 'stairLockWanted',
      severity: 'warn',
      when: yes('floorSideToLock'),
      says: 'The owner wants the floor side of a stair door locked: entry to the stair must always be possible, so at most a delay or a whole release arrangement can serve.',
    },
  ],
  cases: cases(
    ...onEach(unlawful, 'door into a stair', stair, 'yes', { clause: 'a', does: 'prohibit' }),
    ...onEach(whole, 'door into a stair', stair, 'no', 'a'),
    ['free lever', stair, 'no', { clause: 'a', on: 'mortiseLock/secure/free' }],
    ['stair release', stair, 'no', { clause: 'a', on: 'exitTrim/safe/stairReentry' }],
    ['way out of the stair', { egressRole: 'stairDischarge' }, 'no', { clause: 'a', on: 'magnet/safe/none' }],
    ['role not known', {}, 'unknown', { clause: 'a', on: 'magnet/safe/none' }],
    ...onEach(whole, 'door into a stair', stair, 'yes', { clause: 'b', does: 'signOff must' }),
    ['free lever', stair, 'no', { clause: 'b', on: 'mortiseLock/secure/free' }],
    [
      'way out of the stair',
      { egressRole: 'stairDischarge' },
      'no',
      { clause: 'b', on: 'magnet/safe/sensor' },
    ],
    ['role not known', {}, 'unknown', { clause: 'b', on: 'magnet/safe/sensor' }],
    [
      'floor side to be locked',
      { ...stair, stairLockWanted: 'floorSide' },
      'yes',
      { clause: 'c', does: 'warn stairLockWanted' },
    ],
    ['both sides to be locked', { ...stair, stairLockWanted: 'both' }, 'yes', { clause: 'c' }],
    ['stair side only', { ...stair, stairLockWanted: 'stairSide' }, 'no', { clause: 'c' }],
    ['not a stair door', { egressRole: 'exitAccess', stairLockWanted: 'floorSide' }, 'no', { clause: 'c' }],
    ['wish not asked', stair, 'unknown', { clause: 'c' }],
  ),
});
