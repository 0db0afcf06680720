import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

export const R02Cases = cases(
  ...onEach(
    ['magnet/safe/alarmOnly', 'shearMagnet/safe/alarmOnly', 'boltMotor/safe/alarmOnly'],
    'room door released by the alarm only',
    { egressRole: 'exitAccess' },
    'yes',
  ),
  [
    'elevator lobby: the same',
    { egressRole: 'elevatorLobby' },
    'yes',
    { on: 'magnet/safe/alarmOnly', does: 'prohibit' },
  ],
  ['cabinet that nobody can enter', { egressRole: 'noOccupiedSpace' }, 'no', { on: 'magnet/safe/alarmOnly' }],
  ['role not known', {}, 'unknown', { on: 'magnet/safe/alarmOnly' }],
  ...onEach(
    ['magnet/safe/sensor', 'magnet/safe/lobby', 'magnet/safe/controlled', 'mortiseLock/safe/free'],
    'another release',
    { egressRole: 'exitAccess' },
    'no',
  ),
);
