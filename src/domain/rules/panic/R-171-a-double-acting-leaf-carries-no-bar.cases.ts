import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const hall = {
  doorType: 'doubleActing',
  egressRole: 'exitAccess',
  occupancyGroup: 'A-2',
  occupantLoad: 80,
  roomUse: 'other',
} as const;

const on = 'boltSolenoid/safe/doorSwitch';

export const R171Cases = cases(
  ...onEach([on, 'magnet/safe/sensor', 'mechanicalLock/none/free'], 'hall for 80', hall, 'yes', {
    does: 'prohibit',
  }),
  ['push and pull', hall, 'no', { on: 'noLock/none/free' }],
  ['kitchen for 10', { ...hall, occupancyGroup: 'B', occupantLoad: 10 }, 'no', { on }],
  ['single leaf', { ...hall, doorType: 'single' }, 'no', { on }],
  [
    'load not known',
    { doorType: 'doubleActing', egressRole: 'exitAccess', occupancyGroup: 'A-2', roomUse: 'other' },
    'unknown',
    { on },
  ],
);
