import { under } from '../../codes/sections.ts';
import { all, any, atMost, is, no, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const grilleUse = is('occupancyGroup', 'B', 'F-1', 'F-2', 'M', 'S-1', 'S-2');
const smallUse = any(
  is('roomUse', 'office', 'storage'),
  is('occupancyGroup', 'F-1', 'F-2', 'S-1', 'S-2', 'U'),
);

export const R135 = defineRule({
  id: 'R-135',
  title: 'Security grilles and coiling doors in a means of egress',
  family: 'doors',
  book: 'ibc',
  cites: [under('securityGrilles'), under('doorSwing')],
  confidence: 'memory',
  note: 'The clause that a grille stays open while the public is in was read in a state text; the closed list of uses and the small-load case of coiling doors are from general knowledge. Refusing is the safe side.',
  why: 'A grille or coiling door does not swing open in front of a crowd, so it is allowed in a means of egress only in a few uses and never while it could trap someone.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(yes('isEgress'), is('doorType', 'grille'), not(all(grilleUse, yes('mainDoor')))),
      says: 'A security grille may close the main exit of offices, factories, shops and storage only; nowhere else in a means of egress is it allowed, whatever locks it.',
    },
    {
      key: 'b',
      effect: 'modify',
      trade: 'doorSupplier',
      when: all(yes('isEgress'), is('doorType', 'grille'), yes('barriersOverHalf')),
      says: 'Grilles close more than half of the exits; at least half must be ordinary doors.',
    },
    {
      key: 'c',
      effect: 'require',
      when: all(yes('isEgress'), is('doorType', 'grille')),
      items: ['fullOpenMeans'],
      says: 'The grille stays fixed fully open while the public is in, and opens from inside without a key while anyone is there.',
    },
    {
      key: 'd',
      effect: 'prohibit',
      when: all(
        yes('isEgress'),
        is('doorType', 'overhead'),
        not(all(no('groupH'), smallUse, atMost('occupantLoad', 'otherDoorLoad'))),
      ),
      says: 'An overhead or coiling door is not a means of egress except from offices, garages, factory or storage space for ten people or fewer; provide a side-hinged door beside it.',
    },
    {
      key: 'e',
      effect: 'signOff',
      grade: 'must',
      when: all(yes('isEgress'), is('doorType', 'grille', 'overhead')),
      says: 'A reviewer confirms that this grille or coiling door may serve as egress.',
    },
  ],
});
