import { text } from '../../codes/sections.ts';
import { all, any, isKnown, no, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const N91 = defineRule({
  id: 'N-91',
  title: 'Controlled egress only where the owner asks',
  family: 'special',
  book: 'project',
  cites: [text('project', '', 'Owner’s wish')],
  confidence: 'project',
  why: 'No one is kept in by default.',
  clauses: [
    {
      effect: 'prohibit',
      when: any(not(all(isKnown('wishControlledEgress'), yes('wishControlledEgress'))), no('isEgress')),
      of: { release: ['controlled'] },
      says: 'Keeping people in until staff open was not requested here, or no one leaves this way, so it is not offered.',
    },
  ],
});
