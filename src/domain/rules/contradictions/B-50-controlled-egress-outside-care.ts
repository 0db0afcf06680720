import { text, under } from '../../codes/sections.ts';
import { all, ibc, is, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B50 = defineRule({
  id: 'B-50',
  title: 'Controlled egress wanted outside health care',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('controlledEgress')],
  confidence: 'project',
  note: 'NFPA 101 alone leaves some other chapters open, so this applies where the IBC is adopted; detention has its own rules.',
  why: 'Only people whose care requires it may be kept behind a door that staff open.',
  clauses: [
    {
      effect: 'finding',
      field: 'wishControlledEgress',
      severity: 'warn',
      when: all(
        ibc(),
        yes('wishControlledEgress'),
        not(is('occupancyGroup', 'I-1.1', 'I-1.2', 'I-2', 'I-3')),
      ),
      says: 'Controlled egress is wanted in {occupancyGroup}, where people may not be kept in; check the group or withdraw the request.',
    },
  ],
});
