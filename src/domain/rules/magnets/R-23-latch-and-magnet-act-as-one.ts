import { under } from '../../codes/sections.ts';
import {
  besideLeafLock,
  entryByElectricLock,
  handBoltOnLeaf,
  leverOrBarOnLeaf,
  outsideNotKnownFree,
} from '../../arrangement/leafLocks.ts';
import { all, any, is, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R23 = defineRule({
  id: 'R-23',
  title: 'Latch and magnet act as one motion',
  family: 'magnets',
  book: 'ibc',
  cites: [under('hardwareRelease'), under('unlatching')],
  confidence: 'read',
  why: 'A person who has turned the lever believes that the door is free; a magnet that still holds feels like a jammed door.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      items: ['doorSwitchHardware'],
      when: all(yes('isEgress'), not(is('latch', 'pushPull', 'roller'))),
      of: { family: ['magnet'], release: ['doorSwitch'] },
      says: 'The lever or bar that retracts the latch gets the switch that cuts the magnet, so that one motion does both.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: all(yes('isEgress'), not(is('latch', 'pushPull', 'roller'))),
      of: { family: ['magnet'], release: ['sensor'] },
      says: 'The leaf keeps its latch beside the magnet; aim the sensor so that it unlocks before a hand reaches the lever or bar.',
    },
    {
      key: 'c',
      effect: 'require',
      items: ['passageFunction'],
      when: all(entryByElectricLock, any(leverOrBarOnLeaf, yes('panicWithLock')), outsideNotKnownFree),
      of: besideLeafLock,
      says: 'The lever or trim beside this lock is free outside at all hours, or a credential opens nothing: one lock decides who gets in, and the latch below it only holds the leaf closed.',
    },
    {
      key: 'd',
      effect: 'require',
      items: ['lockTakenOff'],
      when: handBoltOnLeaf,
      of: besideLeafLock,
      says: 'Remove the patch lock or bolt on the leaf: once thrown it holds the door after everything else has released.',
    },
  ],
});
