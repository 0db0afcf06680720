import { text } from '../../codes/sections.ts';
import { all, any, is, no, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const T24 = defineRule({
  id: 'T-24',
  title: 'Handing read from the wrong side',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '', 'Handing from the outside')],
  confidence: 'secondary',
  why: 'Hand is read from the secure side; a leaf that swings with the people leaving comes toward that side and is a reverse hand.',
  clauses: [
    {
      effect: 'finding',
      field: 'handing',
      severity: 'warn',
      when: all(
        yes('isSwinging'),
        is('egressRole', 'exitAccess', 'exteriorExit', 'stairDischarge'),
        any(
          all(yes('swingsWithEgress'), is('handing', 'LH', 'RH')),
          all(no('swingsWithEgress'), is('handing', 'LHR', 'RHR')),
        ),
      ),
      says: 'Hand and swing do not agree: a leaf that swings with egress is LHR or RHR seen from the secure side; read it again before the strike and the transfer are ordered.',
    },
  ],
});
