import { cases } from '../rule.ts';

const ward = { wishControlledEgress: true, clinicalNeed: 'none', occupancyGroup: 'I-2' } as const;

export const B51Cases = cases(
  [
    'no need',
    { wishControlledEgress: true, clinicalNeed: 'none', occupancyGroup: 'I-1.1' },
    'yes',
    { does: 'refuse clinicalNeed' },
  ],
  ['no need', { wishControlledEgress: true, clinicalNeed: 'none', occupancyGroup: 'I-1.2' }, 'yes'],
  ['no need', { ...ward, clinicalArea: 'other' }, 'yes'],
  ['need recorded', { ...ward, clinicalArea: 'other', clinicalNeed: 'containment' }, 'no'],
  ['not wanted', { ...ward, clinicalArea: 'other', wishControlledEgress: false }, 'no'],
  ['detention', { ...ward, clinicalArea: 'other', occupancyGroup: 'I-3' }, 'no'],
  ['need not known', { wishControlledEgress: true, clinicalArea: 'other', occupancyGroup: 'I-2' }, 'unknown'],
  [
    'nursery with a listed system',
    { ...ward, clinicalArea: 'nurseryObstetric', abductionSystem: true },
    'no',
  ],
  ['nursery without one', { ...ward, clinicalArea: 'nurseryObstetric', abductionSystem: false }, 'yes'],
  ['pediatric ward with a system', { ...ward, clinicalArea: 'pediatric', abductionSystem: true }, 'yes'],
  [
    'such a system outside a hospital',
    { ...ward, occupancyGroup: 'I-1.2', clinicalArea: 'nurseryObstetric', abductionSystem: true },
    'yes',
  ],
);
