import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const sealed = { egressRole: 'sealedOff' } as const;

export const N13Cases = cases(
  ...onEach(
    ['strikeMortise/secure/free', 'batteryLock/asIs/free', 'magnet/safe/none', 'operatorControl/asIs/free'],
    'sealed off',
    sealed,
    'yes',
    { does: 'prohibit' },
  ),
  ...onEach(
    ['mechanicalLock/none/free', 'noLock/none/free', 'detentionLock/none/attended'],
    'sealed off',
    sealed,
    'no',
  ),
  ['cabinet', { egressRole: 'noOccupiedSpace' }, 'no', { on: 'strikeMortise/secure/free' }],
  ['role not known', {}, 'unknown', { on: 'strikeMortise/secure/free' }],
);
