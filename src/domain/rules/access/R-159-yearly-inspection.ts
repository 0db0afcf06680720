import { text, under } from '../../codes/sections.ts';
import { all, any, nfpa101, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R159 = defineRule({
  id: 'R-159',
  title: 'Annual inspection goes in the schedule notes',
  family: 'access',
  book: 'nfpa101',
  cites: [
    under('doorInspectionNfpa'),
    text('nfpa80', '5.2', 'Inspection and testing'),
    text('ifc', '705', 'Opening protectives'),
  ],
  confidence: 'secondary',
  why: 'Egress and fire door hardware wears out, so it has to be inspected.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: all(nfpa101(), any(yes('hasExitDevice'), yes('isStairDoor'))),
      items: ['yearlyInspection'],
      says: 'NFPA 101 requires annual inspection of doors with exit devices and of stair doors where the occupancy chapter calls for it.',
    },
    {
      key: 'b',
      effect: 'require',
      when: all(nfpa101(), yes('isEgress')),
      of: { release: ['delayed', 'sensor', 'doorSwitch'] },
      items: ['yearlyInspection'],
      says: 'NFPA 101 requires annual inspection of doors with this kind of electric release where the occupancy chapter calls for it.',
    },
    {
      key: 'c',
      effect: 'require',
      when: yes('fireRated'),
      items: ['yearlyInspection'],
      says: 'A fire door is inspected and tested every year, whichever building code is adopted.',
    },
  ],
});
