import { text, under } from '../../codes/sections.ts';
import { all, any, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R80 = defineRule({
  id: 'R-80',
  title: 'No button before the bar works',
  family: 'panic',
  book: 'osha',
  cites: [text('osha', '1910.36(d)', 'Letter of 12 March 1981'), under('panicHardware'), under('unlatching')],
  confidence: 'read',
  why: 'The bar tells people that a push is enough; a button that must come first breaks that promise in the dark.',
  clauses: [
    {
      key: 'b',
      effect: 'modify',
      trade: 'security',
      when: all(yes('isEgress'), is('existingArrangement', 'buttonBeforeBar')),
      says: 'Rewire the lock so that the bar opens the door without the button.',
    },
    {
      key: 'c',
      effect: 'prohibit',
      when: all(yes('isEgress'), any(yes('hasExitDevice'), is('existingArrangement', 'buttonBeforeBar'))),
      of: { release: ['buttonOnly'] },
      says: 'There is a push bar on this door, and with this lock it would work only after a button is pressed.',
    },
  ],
});
