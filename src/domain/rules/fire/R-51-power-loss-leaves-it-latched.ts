import { text, under } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R51 = defineRule({
  id: 'R-51',
  title: 'A fire door stays latched when its power goes',
  family: 'fire',
  book: 'nfpa80',
  cites: [text('nfpa80', '6.4.4', 'Latching hardware'), under('fireDoorLatching')],
  confidence: 'read',
  why: 'Fire and alarm cut the power; what lets go then was never a latch.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: yes('fireRated'),
      of: { family: ['strike', 'bolt'], failMode: ['safe'] },
      says: 'Without power it lets go and nothing is latched any more: on a fire door the state without power must be the latched one.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: yes('fireRated'),
      of: { wired: true, failMode: ['safe'], keepsLatch: false, not: { family: ['strike', 'bolt'] } },
      says: 'It lets go when fire cuts its power; from then on only the separate latch keeps this fire door shut, so that latch must engage at every closing.',
    },
    {
      key: 'c',
      effect: 'permit',
      when: yes('fireRated'),
      of: { family: ['lock', 'exitDevice'], failMode: ['safe'], keepsLatch: true },
      says: 'Fail safe is fine here: only the outside lever unlocks, and the latch stays in the strike.',
    },
  ],
});
