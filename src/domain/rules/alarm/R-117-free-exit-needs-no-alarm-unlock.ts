import { text } from '../../codes/sections.ts';
import { always, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R117 = defineRule({
  id: 'R-117',
  title: 'A free-egress door need not unlock on fire alarm',
  family: 'alarm',
  book: 'nfpa72',
  cites: [text('nfpa72', '21.9 (2010 and later)', 'Electrically locked doors')],
  confidence: 'read',
  note: 'The 2007 text spoke of all exits; the 2010 text says in the direction of egress.',
  why: 'Unlocking the outside on every alarm helps no one leave and lets in anyone who pulls a station.',
  clauses: [
    {
      key: 'a',
      effect: 'permit',
      when: always,
      of: { wired: true, release: ['free'] },
      says: 'The rules here ask for no fire-alarm connection to unlock it: the lever or bar lets people out. A local fire department may ask for one. A connection that makes a fire door latch is a separate matter.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: yes('wishUnlockOnAlarm'),
      of: { wired: true, release: ['free'] },
      says: 'The owner wants the outside unlocked on fire alarm: that adds no safety, opens the building at each false alarm, and must never unlatch a fire door.',
    },
  ],
});
