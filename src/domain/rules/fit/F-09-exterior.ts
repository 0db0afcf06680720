import { text } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const F09 = defineRule({
  id: 'F-09',
  title: 'Exterior opening',
  family: 'fit',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'practice',
  note: 'That a latch guard matters more than the strength class was read in an older federal guide specification.',
  why: 'Rain and frost reach the device, and the latch of an out-swinging leaf can be pried from outside.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      items: ['weatherRated'],
      when: yes('exterior'),
      of: { wired: true },
      says: 'Outdoors the device, its box and its cable entry must be weather rated.',
    },
    {
      key: 'b',
      effect: 'require',
      items: ['latchGuard'],
      when: all(yes('exterior'), yes('isSwinging'), is('handing', 'LHR', 'RHR')),
      of: { family: ['strike', 'lock', 'battery', 'mechanical'] },
      says: 'The leaf swings out, so a latch guard or an astragal covers the latch.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: yes('exterior'),
      of: { device: ['batteryLock'] },
      says: 'Use only a battery lock rated for outdoors by its manufacturer; cold shortens battery life.',
    },
  ],
});
