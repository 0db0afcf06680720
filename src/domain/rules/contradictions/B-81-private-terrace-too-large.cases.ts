import { cases } from '../rule.ts';

export const B81Cases = cases(
  ['251 ft²', { roomUse: 'officeTerrace', roomAreaFt2: 251 }, 'yes', { does: 'warn roomUse' }],
  ['250 ft²', { roomUse: 'officeTerrace', roomAreaFt2: 250 }, 'no'],
  ['large office', { roomUse: 'office', roomAreaFt2: 900 }, 'no'],
  ['not measured', { roomUse: 'officeTerrace' }, 'unknown'],
);
