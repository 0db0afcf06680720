import { text, under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const boltOnly = all(yes('fireRated'), is('latch', 'deadboltOnly', 'hookbolt'));

export const R37 = defineRule({
  id: 'R-37',
  title: 'A deadbolt alone does not latch a fire door',
  family: 'fire',
  book: 'nfpa80',
  cites: [under('fireDoorLatching'), text('nfpa80', '6.4.4', 'Latching hardware')],
  confidence: 'secondary',
  note: 'A narrow-stile hookbolt is counted with the deadbolt. A dwelling entrance with a latch and a deadbolt is not meant.',
  why: 'A deadbolt must be thrown by hand; a fire door has to latch each time it closes.',
  clauses: [
    {
      key: 'a',
      effect: 'finding',
      field: 'latch',
      severity: 'warn',
      when: boltOnly,
      says: 'This fire door has only a deadbolt that someone must throw, so it is unlatched whenever no one did.',
    },
    {
      key: 'b',
      effect: 'require',
      when: boltOnly,
      items: ['latchingHardware'],
      says: 'A labeled self-latching lock replaces the deadbolt.',
    },
  ],
});
