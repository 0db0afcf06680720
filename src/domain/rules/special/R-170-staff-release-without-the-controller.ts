import { text } from '../../codes/sections.ts';
import { all, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';
import { releaseExcuse } from './conditions.ts';

const on = 'magnet/safe/controlled';
const ward = {
  egressRole: 'exitAccess',
  occupancyGroup: 'I-2',
  clinicalArea: 'psychiatric',
  clinicalNeed: 'containment',
} as const;

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
  cases: cases(
    ['psychiatric ward', ward, 'yes', { on, does: ['staffKeySwitch'] }],
    [
      'nursery with an abduction system',
      { ...ward, clinicalArea: 'nurseryObstetric', abductionSystem: true },
      'yes',
      { on },
    ],
    [
      'nursery without one',
      { ...ward, clinicalArea: 'nurseryObstetric', abductionSystem: false },
      'no',
      { on },
    ],
    ['memory care has the remote switch', { ...ward, clinicalArea: 'cognitive' }, 'no', { on }],
    ['nobody leaves by it', { ...ward, egressRole: 'sealedOff' }, 'no', { on }],
    [
      'area not known',
      { egressRole: 'exitAccess', occupancyGroup: 'I-2', abductionSystem: true },
      'unknown',
      { on },
    ],
    ['a keyed lock is not meant', ward, 'no', { on: 'mortiseLock/secure/clinical' }],
  ),
});
