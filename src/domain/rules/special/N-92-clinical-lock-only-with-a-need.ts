import { text } from '../../codes/sections.ts';
import { all, any, is, isKnown, no, not, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

const on = 'mortiseLock/secure/clinical';

/** Somebody asked to keep people in, or says what is treated here: then the need is a question and no “no”. */
const heldByWish = any(
  all(isKnown('wishControlledEgress'), yes('wishControlledEgress')),
  all(isKnown('clinicalArea'), not(is('clinicalArea', 'none'))),
);

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
        all(not(isKnown('clinicalNeed')), not(heldByWish)),
        not(is('clinicalNeed', 'containment', 'securityThreat')),
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
    [
      'protection is no ground for it',
      { clinicalNeed: 'protection', egressRole: 'exitAccess' },
      'yes',
      { on },
    ],
    [
      'need not recorded, control asked',
      { wishControlledEgress: true, egressRole: 'exitAccess' },
      'unknown',
      { on },
    ],
    [
      'need not recorded, no control',
      { wishControlledEgress: false, egressRole: 'exitAccess' },
      'yes',
      { on },
    ],
    [
      'need not recorded, psychiatric unit',
      { clinicalArea: 'psychiatric', egressRole: 'exitAccess' },
      'unknown',
      { on },
    ],
    [
      'need not recorded, no treatment area',
      { clinicalArea: 'none', egressRole: 'exitAccess' },
      'yes',
      { on },
    ],
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
