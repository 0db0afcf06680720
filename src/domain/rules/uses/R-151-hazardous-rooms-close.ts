import { text, under } from '../../codes/sections.ts';
import { all, any, is, no, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const hazardous = is('roomUse', 'hazardousRoom');
const latchless = is('latch', 'pushPull', 'roller');
const careCorridor = all(is('occupancyGroup', 'I-2'), is('wallKind', 'corridor'));

export const R151 = defineRule({
  id: 'R-151',
  title: 'Boiler, laundry and fuel rooms close by themselves',
  family: 'uses',
  book: 'ibc',
  cites: [under('incidentalUses'), text('nfpa101', '8.7', 'Special hazard protection')],
  confidence: 'memory',
  why: 'The door keeps a fire in the room where it is most likely to start.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: all(hazardous, is('closing', 'none')),
      items: ['closer'],
      says: 'Nothing closes this door; it needs a closer, or closing by smoke detection.',
    },
    {
      key: 'b',
      effect: 'modify',
      trade: 'locksmith',
      when: all(hazardous, latchless, any(yes('fireRated'), careCorridor)),
      says: 'This door must latch, because it is rated or stands on a health-care corridor; give it a latch first.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: all(hazardous, latchless, no('fireRated'), not(careCorridor)),
      says: 'Nothing latches this door against smoke; a latch would be wise even though the rating does not require one.',
    },
    {
      key: 'd',
      effect: 'finding',
      field: 'holdOpen',
      severity: 'warn',
      when: all(hazardous, is('holdOpen', 'wedge')),
      says: 'The door of a hazardous room is held open by a wedge or friction arm; remove it or check what the room is.',
    },
  ],
});
