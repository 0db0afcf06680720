import { cases } from '../rule.ts';

export const R161Cases = cases(
  [
    'held exit',
    { oshaWorkplace: true, egressRole: 'exteriorExit' },
    'yes',
    { on: 'delayedMagnet/safe/delayed', does: 'signOff should' },
  ],
  [
    'held exit',
    { oshaWorkplace: true, egressRole: 'exteriorExit' },
    'yes',
    { on: 'mortiseLock/safe/controlled' },
  ],
  [
    'held exit',
    { oshaWorkplace: true, egressRole: 'exteriorExit' },
    'yes',
    { on: 'mortiseLock/secure/clinical' },
  ],
  [
    'held exit',
    { oshaWorkplace: true, egressRole: 'exteriorExit' },
    'yes',
    { on: 'mechanicalLock/none/keyInside' },
  ],
  [
    'free lever',
    { oshaWorkplace: true, egressRole: 'exteriorExit' },
    'no',
    { on: 'mortiseLock/secure/free' },
  ],
  [
    'no federal workplace',
    { oshaWorkplace: false, egressRole: 'exteriorExit' },
    'no',
    { on: 'delayedMagnet/safe/delayed' },
  ],
  [
    'cabinet',
    { oshaWorkplace: true, egressRole: 'noOccupiedSpace' },
    'no',
    { on: 'mechanicalLock/none/keyInside' },
  ],
  ['workplace not known', { egressRole: 'exteriorExit' }, 'unknown', { on: 'delayedMagnet/safe/delayed' }],
);
