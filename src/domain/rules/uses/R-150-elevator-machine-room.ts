import { text } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const machineRoom = is('roomUse', 'elevatorMachineRoom');

export const R150 = defineRule({
  id: 'R-150',
  title: 'Elevator machine rooms close and lock by themselves',
  family: 'uses',
  book: 'a17',
  cites: [text('a17', '', 'Machine room access doors')],
  confidence: 'secondary',
  why: 'The elevator code keeps everyone but authorized personnel out, and lets them out at any time.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: machineRoom,
      of: { failMode: ['safe'] },
      says: 'The door must stay locked from outside when power fails, so nothing fail safe.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: machineRoom,
      of: { device: ['latchRetractionMotor', 'latchRetractionSolenoid'] },
      says: 'A latch that can be held back leaves the machine room open; this door locks by itself each time.',
    },
    {
      key: 'c',
      effect: 'prohibit',
      when: machineRoom,
      of: { not: { release: ['free'] } },
      says: 'From inside it opens freely, without key, card or waiting.',
    },
    {
      key: 'd',
      effect: 'require',
      when: machineRoom,
      items: ['closer', 'storeroomLockset', 'keyCylinder'],
      says: 'It is self-closing, self-locking and opens from outside by key only.',
    },
    {
      key: 'e',
      effect: 'require',
      when: all(machineRoom, yes('isPair')),
      items: ['automaticFlushBolts'],
      says: 'The inactive leaf is held by automatic bolts.',
    },
    {
      key: 'f',
      effect: 'finding',
      field: 'holdOpen',
      severity: 'warn',
      when: all(machineRoom, is('holdOpen', 'detectorReleased', 'heatOnly', 'wedge')),
      says: 'A machine-room door may not be held open; remove the hold-open or check what the room is.',
    },
    {
      key: 'g',
      effect: 'finding',
      field: 'wishScheduledUnlock',
      severity: 'warn',
      when: all(machineRoom, yes('wishScheduledUnlock')),
      says: 'A machine-room door is never unlocked by schedule; withdraw the request or check what the room is.',
    },
  ],
});
