import { text } from '../../codes/sections.ts';
import { always, is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const T06 = defineRule({
  id: 'T-06',
  title: 'Peak current of solenoids',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'secondary',
  why: 'A solenoid that pulls a latch draws 12 to 16 A for a fraction of a second, some more.',
  clauses: [
    {
      key: 'a',
      effect: 'caution',
      when: always,
      of: { device: ['latchRetractionSolenoid'] },
      says: 'Its 12 to 16 A peak is too much for thin transfer wires and small supplies: own supply close to the door, conductors up to 12 AWG, and the wire checked at the peak.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: is('supplyVolts', '12'),
      of: { device: ['latchRetractionMotor', 'latchRetractionSolenoid', 'delayedExitDevice'] },
      says: 'These devices are commonly made for 24 V DC only: bring 24 V.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: always,
      of: { device: ['boltSolenoid', 'glassPatchLock', 'gateLock'] },
      says: 'It draws about three times its steady current for the moment in which it moves (inrush): supply, wire and voltage drop are sized for that peak.',
    },
  ],
});
