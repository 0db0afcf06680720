import { text, under } from '../../codes/sections.ts';
import { all, any, is, no, over, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

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
  cases: cases(
    [
      'opens inward',
      { doorType: 'single', roomUse: 'transformerVault', swingsWithEgress: false },
      'yes',
      { does: 'refuse swingsWithEgress' },
    ],
    ['opens inward', { doorType: 'single', roomUse: 'batteryRoom', swingsWithEgress: false }, 'yes'],
    ['opens inward', { doorType: 'single', roomUse: 'modularDataCenter', swingsWithEgress: false }, 'yes'],
    [
      'large refrigeration room',
      { doorType: 'single', roomUse: 'refrigerationMachinery', roomAreaFt2: 1001, swingsWithEgress: false },
      'yes',
    ],
    [
      'small refrigeration room',
      { doorType: 'single', roomUse: 'refrigerationMachinery', roomAreaFt2: 1000, swingsWithEgress: false },
      'no',
    ],
    [
      'large office',
      { doorType: 'single', roomUse: 'office', roomAreaFt2: 2000, swingsWithEgress: false },
      'no',
    ],
    ['opens outward', { doorType: 'single', roomUse: 'batteryRoom', swingsWithEgress: true }, 'no'],
    ['sliding door', { doorType: 'slidingManual', roomUse: 'batteryRoom', swingsWithEgress: false }, 'no'],
    ['swing not seen', { doorType: 'single', roomUse: 'batteryRoom' }, 'unknown'],
  ),
});
