import { cases } from '../rule.ts';

const on = 'magnet/safe/controlled';

const ward = {
  egressRole: 'exitAccess',
  occupancyGroup: 'I-2',
  clinicalArea: 'psychiatric',
  clinicalNeed: 'containment',
} as const;

export const R170Cases = cases(
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
);
