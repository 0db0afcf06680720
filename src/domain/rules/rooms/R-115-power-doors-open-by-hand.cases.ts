import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';
import { without } from '../without.ts';

const slider = {
  egressRole: 'exteriorExit',
  doorType: 'slidingAutomatic',
  operator: 'none',
  breakaway: true,
} as const;

const swing = { ...slider, doorType: 'single', operator: 'fullPower' } as const;

const plain = { ...swing, operator: 'none' } as const;

const cabinet = { ...slider, egressRole: 'noOccupiedSpace' } as const;

const bolt = 'boltMotor/safe/sensor';

export const R115Cases = cases(
  ['sliding entrance', slider, 'yes', { clause: 'a', does: ['openByHand', 'acceptanceTest'] }],
  ['swing door', plain, 'no', { clause: 'a' }],
  ['cabinet', cabinet, 'no', { clause: 'a' }],
  ['type not known', { egressRole: 'exteriorExit' }, 'unknown', { clause: 'a' }],
  ['no breakaway', { ...slider, breakaway: false }, 'yes', { clause: 'b', does: 'modify doorSupplier' }],
  ['breakaway', slider, 'no', { clause: 'b' }],
  ['swing door', { ...plain, breakaway: false }, 'no', { clause: 'b' }],
  ['cabinet', { ...cabinet, breakaway: false }, 'no', { clause: 'b' }],
  ['breakaway not known', without(slider, 'breakaway'), 'unknown', { clause: 'b' }],
  ['no breakaway', { ...slider, breakaway: false }, 'yes', { clause: 'g', does: ['breakawayHardware'] }],
  ['breakaway', slider, 'no', { clause: 'g' }],
  ['swing door', { ...plain, breakaway: false }, 'no', { clause: 'g' }],
  ['cabinet', { ...cabinet, breakaway: false }, 'no', { clause: 'g' }],
  ['breakaway not known', without(slider, 'breakaway'), 'unknown', { clause: 'g' }],
  ...onEach([bolt, 'magnet/safe/sensor'], 'sliding entrance', slider, 'yes', {
    clause: 'c',
    does: 'caution',
  }),
  ['a mortise lock', slider, 'no', { clause: 'c', on: 'mortiseLock/secure/free' }],
  ['swing door', plain, 'no', { clause: 'c', on: bolt }],
  ['cabinet', cabinet, 'no', { clause: 'c', on: bolt }],
  ['type not known', { egressRole: 'exteriorExit' }, 'unknown', { clause: 'c', on: bolt }],
  ['sliding entrance', slider, 'yes', { clause: 'd', does: 'signOff must' }],
  ['full-power swing door', swing, 'yes', { clause: 'd' }],
  ['low-energy swing door', { ...swing, operator: 'lowEnergy' }, 'no', { clause: 'd' }],
  ['plain door', plain, 'no', { clause: 'd' }],
  ['cabinet', cabinet, 'no', { clause: 'd' }],
  ['operator not known', without(plain, 'operator'), 'unknown', { clause: 'd' }],
  [
    'low-energy swing door',
    { ...swing, operator: 'lowEnergy' },
    'yes',
    { clause: 'e', does: 'signOff note' },
  ],
  ['power assist', { ...swing, operator: 'powerAssist' }, 'yes', { clause: 'e' }],
  ['plain door', plain, 'no', { clause: 'e' }],
  ['cabinet', { ...cabinet, operator: 'lowEnergy' }, 'no', { clause: 'e' }],
  ['operator not known', without(plain, 'operator'), 'unknown', { clause: 'e' }],
  ['full-power swing door', swing, 'yes', { clause: 'f', does: ['acceptanceTest'] }],
  ['low-energy swing door', { ...swing, operator: 'lowEnergy' }, 'no', { clause: 'f' }],
  ['cabinet', { ...swing, egressRole: 'noOccupiedSpace' }, 'no', { clause: 'f' }],
  ['operator not known', without(plain, 'operator'), 'unknown', { clause: 'f' }],
);
