import { under } from '../../codes/sections.ts';
import { all, any, is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const barrier = all(
  is('egressRole', 'crossCorridor'),
  is('wallKind', 'smokeBarrier'),
  any(is('occupancyGroup', 'I-1.2', 'I-2'), is('roomUse', 'patientUnit')),
);

export const R131 = defineRule({
  id: 'R-131',
  title: 'Smoke-barrier doors across a corridor',
  family: 'health',
  book: 'ibc',
  cites: [under('smokeBarrierDoors')],
  confidence: 'secondary',
  note: 'The older text was read, the newer second-hand. Sensor, hardware and delayed release are not closed by the text seen; a reviewer decides. Ambulatory care is known here by the patient care unit.',
  why: 'Patients are moved through these doors to the next compartment, in both directions.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: barrier,
      items: ['closer', 'smokeHoldOpen'],
      says: 'The doors close by themselves when smoke is detected and when power fails.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: barrier,
      of: { release: ['keyInside', 'credentialOut', 'buttonOnly', 'alarmOnly', 'none', 'attended', 'lobby'] },
      says: 'Nothing may keep people from moving into the next smoke compartment.',
    },
    {
      key: 'c',
      effect: 'signOff',
      grade: 'must',
      when: barrier,
      says: 'A reviewer signs for these doors: closing, latch and any lock between the compartments.',
    },
    {
      key: 'd',
      effect: 'caution',
      when: all(barrier, is('doorType', 'doubleEgressPair')),
      says: 'An opposite-swing pair is not a fire door here and in newer editions needs no latch; the 2009 edition required it only where the listing did.',
    },
  ],
});
