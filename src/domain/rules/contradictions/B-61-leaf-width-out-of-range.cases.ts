import { cases } from '../rule.ts';

export const B61Cases = cases(
  ['just under 24 in', { doorType: 'single', leafWidthIn: 23.9375 }, 'yes', { does: 'warn leafWidthIn' }],
  ['23 in', { doorType: 'pair', leafWidthIn: 23 }, 'yes'],
  ['23 in', { doorType: 'doubleEgressPair', leafWidthIn: 23 }, 'yes'],
  ['23 in', { doorType: 'doubleActing', leafWidthIn: 23 }, 'yes'],
  ['23 in', { doorType: 'balanced', leafWidthIn: 23 }, 'yes'],
  ['24 in', { doorType: 'single', leafWidthIn: 24 }, 'no'],
  ['60 in', { doorType: 'single', leafWidthIn: 60 }, 'no'],
  ['just over 60 in', { doorType: 'single', leafWidthIn: 60.0625 }, 'yes'],
  ['96 in', { doorType: 'single', leafWidthIn: 96 }, 'yes'],
  ['gate of 120 in', { doorType: 'gateSwing', leafWidthIn: 120 }, 'no'],
  ['narrow lane', { doorType: 'turnstile', leafWidthIn: 20 }, 'no'],
  ['not measured', { doorType: 'single' }, 'unknown'],
);
