import { text, under } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B70 = defineRule({
  id: 'B-70',
  title: 'Nobody can be inside a room that people use',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('freeEgressIbc')],
  confidence: 'project',
  why: 'An office, a restroom, even a walk-in closet needs an exit.',
  clauses: [
    {
      effect: 'finding',
      field: 'egressRole',
      severity: 'refuse',
      when: all(
        is('egressRole', 'noOccupiedSpace'),
        is(
          'roomUse',
          'office',
          'suiteEntrance',
          'conference',
          'classroom',
          'dayCare',
          'serverRoom',
          'cashRoom',
          'pharmacy',
          'laboratory',
          'multiToilet',
          'singleToilet',
          'closet',
          'dwellingEntrance',
          'dwellingBedroom',
          'patientRoom',
          'patientUnit',
          'memoryCare',
          'detention',
          'courtroom',
          'stormShelter',
          'safeRoom',
          'areaOfRefuge',
          'rescueElevatorLobby',
          'corridor',
          'lobby',
          'kitchen',
        ),
      ),
      says: 'The space is said to hold nobody, but its use is {roomUse}; check the egress role of the door.',
    },
  ],
});
