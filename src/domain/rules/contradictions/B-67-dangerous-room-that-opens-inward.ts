import { text, under } from '../../codes/sections.ts';
import { all, any, is, no, over, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B67 = defineRule({
  id: 'B-67',
  title: 'A vault, battery or refrigeration room that opens inward',
  family: 'contradictions',
  book: 'ibc',
  cites: [under('panicHardware'), text('nec', '110.26(C)(3)', 'Personnel doors')],
  confidence: 'secondary',
  note: 'The electrical code names these rooms from 2014 on, the building code from 2021; the refrigeration room only above its area limit.',
  why: 'A person hurt by arc, acid or gas must be able to fall out through the door, not pull it.',
  clauses: [
    {
      effect: 'finding',
      field: 'swingsWithEgress',
      severity: 'refuse',
      when: all(
        yes('isSwinging'),
        any(
          is('roomUse', 'transformerVault', 'batteryRoom', 'modularDataCenter'),
          all(is('roomUse', 'refrigerationMachinery'), over('roomAreaFt2', 'refrigerationRoomAreaIbc')),
        ),
        no('swingsWithEgress'),
      ),
      says: 'The door of this room must swing outward and is entered as swinging in; look again, or reverse the swing.',
    },
  ],
});
