import { text } from '../../codes/sections.ts';
import { all, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { releaseExcuse } from './conditions.ts';

export const R170 = defineRule({
  id: 'R-170',
  title: 'Staff can open when the controller is dead',
  family: 'special',
  book: 'practice',
  cites: [text('practice', '', 'Staff release of controlled doors')],
  confidence: 'practice',
  note: 'Where the remote switch of R-90 is asked it does this duty; the exception for psychiatric areas and nurseries takes that switch away, and a card or code alone goes through the controller.',
  why: 'Staff who hold a card cannot let anybody out while the controller that reads it hangs.',
  clauses: [
    {
      effect: 'require',
      when: all(yes('isEgress'), releaseExcuse),
      of: { release: ['controlled'] },
      items: ['staffKeySwitch'],
      says: 'No remote switch is asked here, so a key switch at the door, its key carried by all clinical staff, breaks lock power whatever the controller does.',
    },
  ],
});
