import { cases } from '../rule.ts';

export const B73Cases = cases(
  [
    'operator without power',
    { powerAtDoor: false, cablePath: false, operator: 'lowEnergy' },
    'yes',
    { does: 'warn powerAtDoor' },
  ],
  ['operator without power', { powerAtDoor: false, cablePath: false, operator: 'fullPower' }, 'yes'],
  ['operator without power', { powerAtDoor: false, cablePath: false, operator: 'powerAssist' }, 'yes'],
  ['power there', { powerAtDoor: true, cablePath: false, operator: 'fullPower' }, 'no'],
  ['path there', { powerAtDoor: false, cablePath: true, operator: 'fullPower' }, 'no'],
  ['no operator', { powerAtDoor: false, cablePath: false, operator: 'none' }, 'no'],
  ['operator not surveyed', { powerAtDoor: false, cablePath: false }, 'unknown'],
);
