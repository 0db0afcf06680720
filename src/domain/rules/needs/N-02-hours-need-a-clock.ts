import { text } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const N02 = defineRule({
  id: 'N-02',
  title: 'Set hours need a lock that a clock can hold',
  family: 'needs',
  book: 'project',
  cites: [text('project', '', 'Owner’s wish')],
  confidence: 'project',
  why: 'A mechanical lock has to be worked by hand every morning and evening.',
  clauses: [
    {
      effect: 'prohibit',
      when: yes('wishScheduledUnlock'),
      of: { family: ['mechanical', 'none'] },
      says: 'It is to stand unlocked at set hours, and nothing but a hand can lock and unlock it.',
    },
  ],
});
