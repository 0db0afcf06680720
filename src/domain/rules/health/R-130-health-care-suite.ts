import { under } from '../../codes/sections.ts';
import { all, no } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { insideSuite, suiteDoor, suiteEntrance } from './conditions.ts';

export const R130 = defineRule({
  id: 'R-130',
  title: 'Health-care suite: entrance and inner doors',
  family: 'health',
  book: 'ibc',
  cites: [under('hospitalCorridorDoors'), under('careSuites'), under('careSuitesNfpa')],
  confidence: 'secondary',
  why: 'A suite counts as one room: its entrance is a corridor door, its inner doors are not.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: suiteDoor,
      of: { release: ['keyInside', 'credentialOut', 'buttonOnly', 'alarmOnly', 'none', 'attended'] },
      says: 'People leave a suite by this door; only controlled egress or a clinical lock may hold them, and this is neither.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: suiteDoor,
      of: { not: { release: ['free'] } },
      says: 'A reviewer signs for any lock that holds people in the suite.',
    },
    {
      key: 'c',
      effect: 'permit',
      when: all(insideSuite, no('fireRated')),
      says: 'Inside a suite the corridor rule does not require this door to latch.',
    },
    {
      key: 'd',
      effect: 'caution',
      when: suiteEntrance,
      says: 'This is the suite’s corridor door: it latches positively like any patient corridor door.',
    },
  ],
});
