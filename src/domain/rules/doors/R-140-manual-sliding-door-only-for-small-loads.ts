import { under } from '../../codes/sections.ts';
import { all, any, atMost, is, nfpa101, no, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const allowed = any(
  all(no('groupH'), atMost('occupantLoad', 'otherDoorLoad')),
  all(
    is('roomUse', 'dwellingEntrance', 'dwellingBedroom', 'unitBalcony'),
    is('occupancyGroup', 'R-2', 'R-3'),
  ),
  all(is('roomUse', 'singleToilet'), is('occupancyGroup', 'R-1')),
  all(is('suiteDoor', 'inside'), is('occupancyGroup', 'I-2')),
  is('occupancyGroup', 'I-3'),
  is('roomUse', 'detention'),
);

export const R140 = defineRule({
  id: 'R-140',
  title: 'A manual sliding door serves few people',
  family: 'doors',
  book: 'ibc',
  cites: [under('doorSwing'), under('seriesNfpa')],
  confidence: 'secondary',
  note: 'List read secondhand. NFPA 101 leaves it to the occupancy chapter, so it is asked there too.',
  why: 'People pushing in smoke or panic will not slide a door, so it may serve only small loads and a few named rooms.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(yes('isEgress'), is('doorType', 'slidingManual'), not(allowed)),
      says: 'A manual sliding door may not serve as egress here; a side-hinged door must take its place.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'should',
      when: all(nfpa101(), yes('isEgress'), is('doorType', 'slidingManual')),
      says: 'Under NFPA 101 a sliding door serves as egress only where the occupancy chapter says so; read that chapter.',
    },
  ],
});
