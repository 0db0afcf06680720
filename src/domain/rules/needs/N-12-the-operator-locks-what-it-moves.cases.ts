import { onEach } from '../onEach.ts';
import { type CaseRow, cases } from '../rule.ts';
import { without } from '../without.ts';

const slider = {
  doorType: 'slidingAutomatic',
  operator: 'fullPower',
  latch: 'operatorLock',
  egressRole: 'exteriorExit',
  breakaway: true,
} as const;

const shutter = { ...slider, doorType: 'overhead', egressRole: 'noOccupiedSpace' } as const;

const byHand = { ...slider, operator: 'none', latch: 'hookbolt' } as const;

const loose = ['magnet/safe/sensor', 'boltMotor/secure/sensor', 'shearMagnet/safe/none'];

export const N12Cases = cases(
  ...onEach(loose, 'automatic slider', slider, 'yes', { clause: 'a', does: 'prohibit' }),
  ...(['overhead', 'grille', 'gateSlide'] as const).map(
    (doorType): CaseRow => [
      'driven leaf',
      { ...slider, doorType },
      'yes',
      { clause: 'a', on: 'magnet/safe/sensor' },
    ],
  ),
  ['low energy', { ...byHand, operator: 'lowEnergy' }, 'yes', { clause: 'a', on: 'magnet/safe/sensor' }],
  ['full power', { ...byHand, operator: 'fullPower' }, 'yes', { clause: 'a', on: 'magnet/safe/sensor' }],
  [
    'lock of an operator seen',
    { ...byHand, latch: 'operatorLock' },
    'yes',
    { clause: 'a', on: 'magnet/safe/sensor' },
  ],
  ['grille by hand', { ...byHand, doorType: 'grille' }, 'no', { clause: 'a', on: 'magnet/safe/sensor' }],
  [
    'hinged door with an operator',
    { ...slider, doorType: 'single' },
    'no',
    { clause: 'a', on: 'magnet/safe/sensor' },
  ],
  ['operator not known', without(byHand, 'operator'), 'unknown', { clause: 'a', on: 'magnet/safe/sensor' }],
  ['the operator itself', slider, 'no', { clause: 'a', on: 'operatorControl/asIs/free' }],
  [
    'hinged door',
    { ...slider, doorType: 'single' },
    'yes',
    { clause: 'b', on: 'operatorControl/asIs/free', does: 'prohibit' },
  ],
  [
    'grille by hand',
    { ...byHand, doorType: 'grille' },
    'yes',
    { clause: 'b', on: 'operatorControl/asIs/none' },
  ],
  ['automatic slider', slider, 'no', { clause: 'b', on: 'operatorControl/asIs/free' }],
  ['shutter', shutter, 'no', { clause: 'b', on: 'operatorControl/asIs/none' }],
  ...(['grille', 'gateSlide'] as const).map(
    (doorType): CaseRow => [
      'driven leaf',
      { ...slider, doorType },
      'no',
      { clause: 'b', on: 'operatorControl/asIs/none' },
    ],
  ),
  [
    'low energy',
    { ...byHand, operator: 'lowEnergy' },
    'no',
    { clause: 'b', on: 'operatorControl/asIs/free' },
  ],
  [
    'full power',
    { ...byHand, operator: 'fullPower' },
    'no',
    { clause: 'b', on: 'operatorControl/asIs/free' },
  ],
  [
    'lock of an operator seen',
    { ...byHand, latch: 'operatorLock' },
    'no',
    { clause: 'b', on: 'operatorControl/asIs/free' },
  ],
  [
    'operator not known',
    without(byHand, 'operator'),
    'unknown',
    { clause: 'b', on: 'operatorControl/asIs/free' },
  ],
  [
    'a magnet is clause a',
    { ...slider, doorType: 'single' },
    'no',
    { clause: 'b', on: 'magnet/safe/sensor' },
  ],
  [
    'slider without breakaway',
    { ...slider, breakaway: false },
    'yes',
    { clause: 'c', on: 'operatorControl/asIs/free', does: 'prohibit' },
  ],
  ['slider that swings out', slider, 'no', { clause: 'c', on: 'operatorControl/asIs/free' }],
  [
    'shutter in a way out',
    { ...shutter, egressRole: 'exteriorExit' },
    'yes',
    { clause: 'c', on: 'operatorControl/asIs/free' },
  ],
  ['shutter nobody leaves by', shutter, 'no', { clause: 'c', on: 'operatorControl/asIs/free' }],
  [
    'breakaway not known',
    without(slider, 'breakaway'),
    'unknown',
    { clause: 'c', on: 'operatorControl/asIs/free' },
  ],
  [
    'released by its sensor',
    { ...slider, breakaway: false },
    'no',
    { clause: 'c', on: 'operatorControl/safe/sensor' },
  ],
  ['a free lever', { ...slider, breakaway: false }, 'no', { clause: 'c', on: 'mortiseLock/secure/free' }],
  ['shutter', shutter, 'yes', { clause: 'd', on: 'operatorControl/asIs/free', does: 'prohibit' }],
  ['released by a sensor is clause f', shutter, 'no', { clause: 'd', on: 'operatorControl/safe/sensor' }],
  ['shutter', shutter, 'yes', { clause: 'f', on: 'operatorControl/safe/sensor', does: 'prohibit' }],
  ['grille', { ...shutter, doorType: 'grille' }, 'no', { clause: 'f', on: 'operatorControl/safe/sensor' }],
  ['automatic slider', slider, 'no', { clause: 'f', on: 'operatorControl/safe/sensor' }],
  [
    'type not known',
    without(slider, 'doorType'),
    'unknown',
    { clause: 'f', on: 'operatorControl/safe/sensor' },
  ],
  ['no release', shutter, 'no', { clause: 'f', on: 'operatorControl/asIs/none' }],
  ['a magnet is clause a', shutter, 'no', { clause: 'f', on: 'magnet/safe/sensor' }],
  ['shutter, no release', shutter, 'no', { clause: 'd', on: 'operatorControl/asIs/none' }],
  ['a magnet is clause a', shutter, 'no', { clause: 'd', on: 'magnet/safe/sensor' }],
  ['automatic slider', slider, 'no', { clause: 'd', on: 'operatorControl/asIs/free' }],
  [
    'type not known',
    without(slider, 'doorType'),
    'unknown',
    { clause: 'd', on: 'operatorControl/asIs/free' },
  ],
  ['way out', slider, 'yes', { clause: 'e', on: 'operatorControl/asIs/free', does: 'signOff must' }],
  ['nobody leaves by it', shutter, 'no', { clause: 'e', on: 'operatorControl/asIs/none' }],
  [
    'role not known',
    without(slider, 'egressRole'),
    'unknown',
    { clause: 'e', on: 'operatorControl/asIs/free' },
  ],
  ['a magnet', slider, 'no', { clause: 'e', on: 'magnet/safe/sensor' }],
  ['a free lever', shutter, 'no', { clause: 'd', on: 'mortiseLock/secure/free' }],
);
