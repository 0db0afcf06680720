import { text } from '../../codes/sections.ts';
import { all, any, is, isKnown, no, not } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

const on = 'mortiseLock/secure/clinical';

export const N92 = defineRule({
  id: 'N-92',
  title: 'Clinical lock only with a recorded clinical need',
  family: 'special',
  book: 'project',
  cites: [text('project', '', 'Recorded need')],
  confidence: 'project',
  why: 'A lock that only staff open rests on a documented need.',
  clauses: [
    {
      effect: 'prohibit',
      when: any(
        not(all(isKnown('clinicalNeed'), is('clinicalNeed', 'containment', 'securityThreat'))),
        no('isEgress'),
      ),
      of: { release: ['clinical'] },
      says: 'No clinical need to keep people in is recorded here, or no one leaves this way, so a lock that only staff open is not offered.',
    },
  ],
  cases: cases(
    ['containment', { clinicalNeed: 'containment', egressRole: 'exitAccess' }, 'no', { on }],
    ['security threat', { clinicalNeed: 'securityThreat', egressRole: 'exitAccess' }, 'no', { on }],
    ['no need', { clinicalNeed: 'none', egressRole: 'exitAccess' }, 'yes', { on, does: 'prohibit' }],
    ['need not recorded', { egressRole: 'exitAccess' }, 'yes', { on }],
    ['nothing known', {}, 'yes', { on }],
    ['medicine cabinet', { clinicalNeed: 'containment', egressRole: 'noOccupiedSpace' }, 'yes', { on }],
    ['need, role not known', { clinicalNeed: 'containment' }, 'unknown', { on }],
    [
      'a free lever is not meant',
      { clinicalNeed: 'none', egressRole: 'exitAccess' },
      'no',
      { on: 'mortiseLock/secure/free' },
    ],
  ),
});
