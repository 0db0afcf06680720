import { text } from '../../codes/sections.ts';
import { all, no, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R166 = defineRule({
  id: 'R-166',
  title: 'No power and no cable path',
  family: 'access',
  book: 'practice',
  cites: [text('practice', '', 'Power at the opening')],
  confidence: 'practice',
  why: 'A device without power does not work.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(no('powerAtDoor'), no('cablePath')),
      of: { wired: true },
      says: 'The survey found no power and no cable path, so only battery-powered or mechanical hardware can be used here.',
    },
    {
      key: 'b',
      effect: 'modify',
      trade: 'electrician',
      when: all(yes('powerAtDoor'), no('cablePath')),
      of: { wired: true },
      says: 'There is power but no path to the frame: provide surface raceway, or a listed power supply at the door with wireless control.',
    },
  ],
});
