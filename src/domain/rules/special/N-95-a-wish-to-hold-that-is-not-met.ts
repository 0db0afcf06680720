import { text } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const N95 = defineRule({
  id: 'N-95',
  title: 'A request to hold people that is not met',
  family: 'special',
  book: 'project',
  cites: [text('project', '', 'Owner’s wish')],
  confidence: 'project',
  why: 'An owner who asked for a delay must be told that this door has none before it is bought.',
  clauses: [
    {
      key: 'a',
      effect: 'caution',
      when: yes('wishDelayedEgress'),
      of: { not: { release: ['delayed'] } },
      says: 'The owner asked for a delay on leaving; this choice gives none.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: yes('wishControlledEgress'),
      of: { not: { release: ['controlled', 'clinical', 'attended'] } },
      says: 'The owner asked to keep people in until staff open; this choice does not do that.',
    },
  ],
});
