import { cases } from '../rule.ts';

const on = 'mortiseLock/secure/clinical';

export const N92Cases = cases(
  ['containment', { clinicalNeed: 'containment', egressRole: 'exitAccess' }, 'no', { on }],
  ['security threat', { clinicalNeed: 'securityThreat', egressRole: 'exitAccess' }, 'no', { on }],
  ['no need', { clinicalNeed: 'none', egressRole: 'exitAccess' }, 'yes', { on, does: 'prohibit' }],
  ['need not recorded', { egressRole: 'exitAccess' }, 'yes', { on }],
  ['nothing known', {}, 'yes', { on }],
  ['protection is no ground for it', { clinicalNeed: 'protection', egressRole: 'exitAccess' }, 'yes', { on }],
  [
    'need not recorded, control asked',
    { wishControlledEgress: true, egressRole: 'exitAccess' },
    'unknown',
    { on },
  ],
  ['need not recorded, no control', { wishControlledEgress: false, egressRole: 'exitAccess' }, 'yes', { on }],
  [
    'need not recorded, psychiatric unit',
    { clinicalArea: 'psychiatric', egressRole: 'exitAccess' },
    'unknown',
    { on },
  ],
  ['need not recorded, no treatment area', { clinicalArea: 'none', egressRole: 'exitAccess' }, 'yes', { on }],
  ['medicine cabinet', { clinicalNeed: 'containment', egressRole: 'noOccupiedSpace' }, 'yes', { on }],
  ['need, role not known', { clinicalNeed: 'containment' }, 'unknown', { on }],
  [
    'a free lever is not meant',
    { clinicalNeed: 'none', egressRole: 'exitAccess' },
    'no',
    { on: 'mortiseLock/secure/free' },
  ],
);
