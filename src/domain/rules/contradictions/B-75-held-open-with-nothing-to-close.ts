import { text, under } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B75 = defineRule({
  id: 'B-75',
  title: 'Held open, with nothing to close it',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('smokeActivatedClosing')],
  confidence: 'project',
  why: 'A releasing hold-open is of use only where a closer then shuts the door.',
  clauses: [
    {
      effect: 'finding',
      field: 'closing',
      severity: 'warn',
      when: all(is('closing', 'none'), is('holdOpen', 'detectorReleased', 'heatOnly')),
      says: 'The door has a releasing hold-open, and no closer is recorded; look for one.',
    },
  ],
});
