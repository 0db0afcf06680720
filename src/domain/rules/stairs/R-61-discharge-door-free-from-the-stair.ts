import { under } from '../../codes/sections.ts';
import { all, any, ibc, is, nfpa101, not } from '../../logic/condition.ts';
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
const held = ['sensor', 'doorSwitch', 'delayed', 'controlled', 'clinical', 'attended'] as const;
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
  title: 'The discharge door is free from the stair',
  family: 'stairs',
  book: 'ibc',
  cites: [under('stairDoors')],
  confidence: 'read',
  note: 'That a discharge door is locked only from the side opposite to egress was read; that no release arrangement of another section lifts this is our reading, the safe side. NFPA 101 alone: a reviewer decides.',
  why: 'Everyone in the stair ends up at this door; only its outside may be locked.',
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
      says: 'It locks the stair discharge, where the lever or bar must always open the door.',
    },
    {
      key: 'c',
      effect: 'signOff',
      grade: 'must',
      when: is('egressRole', 'stairDischarge'),
      of: { release: held },
      says: 'It holds the last door of a stair until something releases it: a reviewer decides whether that is acceptable here.',
    },
    {
      key: 'd',
      effect: 'prohibit',
      when: all(any(ibc(), not(nfpa101())), is('egressRole', 'stairDischarge')),
      of: { release: held.filter((release) => release !== 'attended') },
      says: 'The last door of a stair may be locked only from outside; from the stair its lever or bar opens it at once, and no delay or release stands in for that.',
    },
  ],
  cases: cases(
    ...onEach(
      whole.filter((id) => !id.endsWith('attended')),
      'way out of the stair',
      out,
      'yes',
      { clause: 'd', does: 'prohibit' },
    ),
    [
      'no code chosen',
      out,
      'yes',
      { clause: 'd', on: 'magnet/safe/sensor', basis: { ibc: null, nfpa101: null } },
    ],
    [
      'NFPA 101 alone',
      out,
      'no',
      { clause: 'd', on: 'magnet/safe/sensor', basis: { ibc: null, nfpa101: 2021 } },
    ],
    ['detention goes to its own rules', out, 'no', { clause: 'd', on: 'detentionLock/none/attended' }],
    ['free bar', out, 'no', { clause: 'd', on: 'exitTrim/secure/free' }],
    ['door into the stair', { egressRole: 'stairEntry' }, 'no', { clause: 'd', on: 'magnet/safe/sensor' }],
    ['role not known', {}, 'unknown', { clause: 'd', on: 'magnet/safe/sensor' }],
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
