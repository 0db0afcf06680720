import { text } from '../../codes/sections.ts';
import { always, is } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

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
  cases: cases(
    [
      'solenoid retraction',
      {},
      'yes',
      { clause: 'a', on: 'latchRetractionSolenoid/secure/free', does: 'caution' },
    ],
    ['motor retraction', {}, 'no', { clause: 'a', on: 'latchRetractionMotor/secure/free' }],
    ...onEach(
      [
        'latchRetractionMotor/secure/free',
        'latchRetractionSolenoid/secure/free',
        'delayedExitDevice/safe/delayed',
      ],
      '12 V supply',
      { supplyVolts: '12' },
      'yes',
      { clause: 'b', does: 'caution' },
    ),
    ['24 V supply', { supplyVolts: '24' }, 'no', { clause: 'b', on: 'latchRetractionMotor/secure/free' }],
    ['voltage not chosen', {}, 'unknown', { clause: 'b', on: 'latchRetractionMotor/secure/free' }],
    ['strikes come in both', { supplyVolts: '12' }, 'no', { clause: 'b', on: 'strikeMortise/secure/free' }],
    ...onEach(
      ['boltSolenoid/secure/sensor', 'glassPatchLock/safe/sensor', 'gateLock/secure/free'],
      'moved by a solenoid',
      {},
      'yes',
      { clause: 'c', does: 'caution' },
    ),
    ['moved by a motor', {}, 'no', { clause: 'c', on: 'boltMotor/secure/sensor' }],
  ),
});
