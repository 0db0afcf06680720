import { text, under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R26 = defineRule({
  id: 'R-26',
  title: 'An electric bolt is not a fire door latch',
  family: 'magnets',
  book: 'nfpa80',
  cites: [under('fireDoorLatching'), text('nfpa80', '6.4.4', 'Latching hardware')],
  confidence: 'memory',
  why: 'In a fire the leaf must latch by its own spring each time it closes; a bolt waits for power and a command.',
  clauses: [
    {
      effect: 'prohibit',
      when: all(yes('fireRated'), is('latch', 'pushPull', 'roller', 'deadboltOnly', 'hookbolt', 'patch')),
      of: { family: ['bolt'] },
      says: 'Nothing on this fire door is self-latching, and an electric bolt cannot take its place.',
    },
  ],
});
