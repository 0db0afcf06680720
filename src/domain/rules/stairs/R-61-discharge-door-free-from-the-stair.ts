import { under } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

const out = { egressRole: 'stairDischarge' } as const;
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

export const R61 = defineRule({
  id: 'R-61',
  title: 'A stair’s way out is free from the stair',
  family: 'stairs',
  book: 'ibc',
  cites: [under('stairDoors')],
  confidence: 'read',
  note: 'Whether a whole release arrangement (delay, sensor, switch in the bar) may stand at a discharge door was not read; it goes to a reviewer.',
  why: 'Everybody in the stair ends at this door; only its outside may be locked.',
  clauses: [
    {
      key: 'a',
      effect: 'permit',
      when: is('egressRole', 'stairDischarge'),
      of: { release: ['free'] },
      says: 'The outside may be fail secure or locked by key, and nothing here has to unlock on fire alarm.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: is('egressRole', 'stairDischarge'),
      of: { release: ['none', 'alarmOnly', 'buttonOnly', 'credentialOut', 'keyInside', 'lobby'] },
      says: 'It locks the way out of the stair, where the lever or bar must always open the door.',
    },
    {
      key: 'c',
      effect: 'signOff',
      grade: 'must',
      when: is('egressRole', 'stairDischarge'),
      of: { release: ['sensor', 'doorSwitch', 'delayed', 'controlled', 'clinical', 'attended'] },
      says: 'It holds the last door of a stair until something releases it: a reviewer decides whether that is acceptable here.',
    },
  ],
  cases: cases(
    ['way out of the stair', out, 'yes', { clause: 'a', on: 'exitTrim/secure/free', does: 'permit' }],
    ['the same with a mechanical lock', out, 'yes', { clause: 'a', on: 'mechanicalLock/none/free' }],
    ['door into the stair', { egressRole: 'stairEntry' }, 'no', { clause: 'a', on: 'exitTrim/secure/free' }],
    ['magnet', out, 'no', { clause: 'a', on: 'magnet/safe/sensor' }],
    ['role not known', {}, 'unknown', { clause: 'a', on: 'exitTrim/secure/free' }],
    ...onEach(unlawful, 'way out of the stair', out, 'yes', { clause: 'b', does: 'prohibit' }),
    ...onEach(whole, 'way out of the stair', out, 'no', 'b'),
    ['free bar', out, 'no', { clause: 'b', on: 'exitTrim/secure/free' }],
    [
      'door into the stair is R-60',
      { egressRole: 'stairEntry' },
      'no',
      { clause: 'b', on: 'magnet/safe/none' },
    ],
    ['role not known', {}, 'unknown', { clause: 'b', on: 'magnet/safe/none' }],
    ...onEach(whole, 'way out of the stair', out, 'yes', { clause: 'c', does: 'signOff must' }),
    ['free bar', out, 'no', { clause: 'c', on: 'exitTrim/secure/free' }],
    [
      'door into the stair is R-60',
      { egressRole: 'stairEntry' },
      'no',
      { clause: 'c', on: 'magnet/safe/sensor' },
    ],
    ['role not known', {}, 'unknown', { clause: 'c', on: 'magnet/safe/sensor' }],
  ),
});
