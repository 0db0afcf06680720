import { under } from '../../codes/sections.ts';
import { all, any, is, yes } from '../../logic/condition.ts';
import { hospitalCorridorDoor, suiteEntrance } from '../health/conditions.ts';
import { defineRule } from '../rule.ts';

/** The other doors of a hospital corridor are signed for by R-22. */
const patientDoor = any(is('roomUse', 'patientRoom'), suiteEntrance);

export const R107 = defineRule({
  id: 'R-107',
  title: 'Hospital corridor doors latch',
  family: 'rooms',
  book: 'ibc',
  cites: [under('hospitalCorridorDoors'), under('hospitalCorridorDoorsNfpa')],
  confidence: 'read',
  note: 'Automatic bolts on pairs were read second-hand. That a fail-safe strike, and a strike or retracted latch held by schedule, give the latch up follows from how they work; whether an automatic drop on alarm would do was not read, so hours with these are refused.',
  why: 'Patients stay in their rooms in a fire, behind doors that keep smoke out only while they are latched.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(hospitalCorridorDoor, is('latch', 'pushPull', 'roller')),
      of: {
        device: ['magnet', 'shearMagnet', 'boltSolenoid', 'boltMotor', 'delayedMagnet', 'glassPatchLock'],
      },
      says: 'This door has no positive latch, and a magnet or electric bolt cannot take the place of one.',
    },
    {
      key: 'b',
      effect: 'modify',
      trade: 'locksmith',
      when: all(hospitalCorridorDoor, is('latch', 'pushPull', 'roller')),
      says: 'Install a positive latch; a roller latch or push and pull plates do not hold this door shut in a fire.',
    },
    {
      key: 'c',
      effect: 'prohibit',
      when: hospitalCorridorDoor,
      of: { family: ['strike'], failMode: ['safe'] },
      says: 'A fail-safe strike releases the latch when power fails, and a hospital corridor door must stay latched.',
    },
    {
      key: 'e',
      effect: 'prohibit',
      when: all(hospitalCorridorDoor, yes('wishScheduledUnlock')),
      of: { family: ['strike', 'exitDevice'], failMode: ['secure'], keepsLatch: false },
      says: 'Held unlocked for hours it leaves the door unlatched, and a hospital corridor door must stay latched; use a lock or trim whose latch stays engaged while the outside is unlocked.',
    },
    {
      key: 'd',
      effect: 'require',
      when: all(hospitalCorridorDoor, yes('isPair'), is('inactiveBolts', 'manualFlush', 'none')),
      items: ['automaticFlushBolts'],
      says: 'The inactive leaf needs automatic bolts; manual bolts are not accepted here.',
    },
    {
      key: 'f',
      effect: 'signOff',
      grade: 'must',
      when: all(patientDoor, is('latch', 'pushPull', 'roller')),
      says: 'Nothing latches this door today and it must latch: report it to the reviewer, and agree on what holds it until the latch is in.',
    },
  ],
});
