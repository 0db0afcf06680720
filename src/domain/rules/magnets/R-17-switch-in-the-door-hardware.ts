import { under } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

export const R17 = defineRule({
  id: 'R-17',
  title: 'Release by the door hardware breaks lock power directly',
  family: 'magnets',
  book: 'ibc',
  cites: [under('hardwareRelease')],
  confidence: 'read',
  note: 'The clause was read in the 2018 edition; later editions second-hand.',
  why: 'The person’s own hand on bar or lever must open the lock at once, without any controller having a say.',
  clauses: [
    {
      effect: 'require',
      when: yes('isEgress'),
      of: { release: ['doorSwitch'] },
      items: ['doorSwitchHardware', 'powerLossRelease', 'listedLock'],
      says: 'Bar or lever on the leaf, obvious in any light and worked with one hand, cuts lock power by its own switch; loss of power unlocks too.',
    },
  ],
  cases: cases(
    ...onEach(
      ['magnet/safe/doorSwitch', 'shearMagnet/safe/doorSwitch', 'boltMotor/safe/doorSwitch'],
      'room door',
      { egressRole: 'exitAccess' },
      'yes',
    ),
    ['cabinet', { egressRole: 'noOccupiedSpace' }, 'no', { on: 'magnet/safe/doorSwitch' }],
    ['role not known', {}, 'unknown', { on: 'magnet/safe/doorSwitch' }],
    ...onEach(
      ['magnet/safe/sensor', 'mortiseLock/secure/free'],
      'another release',
      { egressRole: 'exitAccess' },
      'no',
    ),
  ),
});
