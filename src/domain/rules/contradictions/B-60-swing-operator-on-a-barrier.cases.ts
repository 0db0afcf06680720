import { cases } from '../rule.ts';

export const B60Cases = cases(
  [
    'swing operator on a barrier',
    { doorType: 'revolving', operator: 'lowEnergy' },
    'yes',
    { does: 'warn operator' },
  ],
  ['swing operator on a barrier', { doorType: 'revolving', operator: 'powerAssist' }, 'yes'],
  ['swing operator on a barrier', { doorType: 'turnstile', operator: 'lowEnergy' }, 'yes'],
  ['swing operator on a barrier', { doorType: 'turnstile', operator: 'powerAssist' }, 'yes'],
  ['swing operator on a barrier', { doorType: 'turnstileFull', operator: 'lowEnergy' }, 'yes'],
  ['swing operator on a barrier', { doorType: 'turnstileFull', operator: 'powerAssist' }, 'yes'],
  ['swing operator on a barrier', { doorType: 'turnstileSecurity', operator: 'lowEnergy' }, 'yes'],
  ['swing operator on a barrier', { doorType: 'turnstileSecurity', operator: 'powerAssist' }, 'yes'],
  ['swing operator on a barrier', { doorType: 'grille', operator: 'lowEnergy' }, 'yes'],
  ['swing operator on a barrier', { doorType: 'grille', operator: 'powerAssist' }, 'yes'],
  ['driven revolving door', { doorType: 'revolving', operator: 'fullPower' }, 'no'],
  ['swinging leaf', { doorType: 'single', operator: 'lowEnergy' }, 'no'],
  ['operator not surveyed', { doorType: 'revolving' }, 'unknown'],
);
