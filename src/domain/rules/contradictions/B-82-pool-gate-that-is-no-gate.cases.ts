import { cases } from '../rule.ts';

export const B82Cases = cases(
  ['no gate', { poolBarrierGate: true, doorType: 'pair' }, 'yes', { does: 'warn poolBarrierGate' }],
  ['no gate', { poolBarrierGate: true, doorType: 'doubleEgressPair' }, 'yes'],
  ['no gate', { poolBarrierGate: true, doorType: 'doubleActing' }, 'yes'],
  ['no gate', { poolBarrierGate: true, doorType: 'balanced' }, 'yes'],
  ['no gate', { poolBarrierGate: true, doorType: 'slidingAutomatic' }, 'yes'],
  ['no gate', { poolBarrierGate: true, doorType: 'folding' }, 'yes'],
  ['no gate', { poolBarrierGate: true, doorType: 'revolving' }, 'yes'],
  ['no gate', { poolBarrierGate: true, doorType: 'overhead' }, 'yes'],
  ['no gate', { poolBarrierGate: true, doorType: 'grille' }, 'yes'],
  ['no gate', { poolBarrierGate: true, doorType: 'turnstile' }, 'yes'],
  ['no gate', { poolBarrierGate: true, doorType: 'turnstileFull' }, 'yes'],
  ['no gate', { poolBarrierGate: true, doorType: 'turnstileSecurity' }, 'yes'],
  ['gate', { poolBarrierGate: true, doorType: 'gateSwing' }, 'no'],
  ['gate', { poolBarrierGate: true, doorType: 'single' }, 'no'],
  ['pair of a hall', { poolBarrierGate: false, doorType: 'pair' }, 'no'],
  ['door type not known', { poolBarrierGate: true }, 'unknown'],
);
