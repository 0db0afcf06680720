import { text, under } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R32 = defineRule({
  id: 'R-32',
  title: 'A fail secure strike on a rated door is listed for it',
  family: 'fire',
  book: 'nfpa80',
  cites: [under('openingProtectives'), text('nfpa80', '6.4.4', 'Latching hardware')],
  confidence: 'secondary',
  why: 'Only a strike tested in fire, in a frame made for it, is known to hold the latch through a fire.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: yes('fireRated'),
      of: { family: ['strike'], failMode: ['secure'] },
      items: ['fireListedStrike'],
      says: 'The strike carries a fire listing that reaches this rating and this latch, and the cutout in the frame was made under the frame’s label.',
    },
    {
      key: 'b',
      effect: 'permit',
      when: yes('fireRated'),
      of: { family: ['strike'], failMode: ['secure'], release: ['free'] },
      says: 'A fail secure strike is allowed on a fire door: it holds the latch whenever it has no power, and the lever or bar still lets people out.',
    },
  ],
});
