import { under } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

const overRoof = all(is('egressRole', 'roofDoor'), is('roofUse', 'egressPath'));
const roof = { egressRole: 'roofDoor', roofUse: 'egressPath' } as const;

export const R65 = defineRule({
  id: 'R-65',
  title: 'Where egress leads over the roof its door opens freely',
  family: 'stairs',
  book: 'ibc',
  cites: [under('freeEgressIbc'), under('freeEgressNfpa')],
  confidence: 'secondary',
  why: 'It is rare that people leave upward, but then the roof door is an exit like any other.',
  clauses: [
    {
      key: 'a',
      effect: 'signOff',
      grade: 'must',
      when: overRoof,
      says: 'The egress path leads up and over the roof: a reviewer confirms the path and both sides of this door.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: overRoof,
      of: { failMode: ['secure', 'asIs', 'none'], not: { release: ['free'] } },
      says: 'It can stay locked against people going up when power fails, and no lever or bar frees it.',
    },
  ],
  cases: cases(
    ['way out over the roof', roof, 'yes', { clause: 'a', does: 'signOff must' }],
    ['unoccupied roof', { ...roof, roofUse: 'unoccupied' }, 'no', { clause: 'a' }],
    ['office door', { ...roof, egressRole: 'exitAccess' }, 'no', { clause: 'a' }],
    ['use of the roof not known', { egressRole: 'roofDoor' }, 'unknown', { clause: 'a' }],
    ['fail secure bolt', roof, 'yes', { clause: 'b', on: 'boltMotor/secure/sensor', does: 'prohibit' }],
    ['battery lock with a code to leave', roof, 'yes', { clause: 'b', on: 'batteryLock/asIs/clinical' }],
    ['key inside', roof, 'yes', { clause: 'b', on: 'mechanicalLock/none/keyInside' }],
    ['fail-safe magnet with sensor', roof, 'no', { clause: 'b', on: 'magnet/safe/sensor' }],
    ['fail secure lock with a free lever', roof, 'no', { clause: 'b', on: 'mortiseLock/secure/free' }],
    [
      'unoccupied roof',
      { ...roof, roofUse: 'unoccupied' },
      'no',
      { clause: 'b', on: 'mechanicalLock/none/keyInside' },
    ],
    [
      'office door',
      { ...roof, egressRole: 'exitAccess' },
      'no',
      { clause: 'b', on: 'mechanicalLock/none/keyInside' },
    ],
    [
      'use of the roof not known',
      { egressRole: 'roofDoor' },
      'unknown',
      { clause: 'b', on: 'mechanicalLock/none/keyInside' },
    ],
  ),
});
