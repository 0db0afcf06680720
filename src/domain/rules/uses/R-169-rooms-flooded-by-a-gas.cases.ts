import { onEach } from '../onEach.ts';
import { type CaseRow, cases } from '../rule.ts';
import { without } from '../without.ts';

const room = {
  roomUse: 'serverRoom',
  agentFlooded: true,
  doorType: 'single',
  egressRole: 'exitAccess',
  swingsWithEgress: false,
} as const;

const held = 'magnet/safe/sensor';

/** The room, for a clause whose own condition the facts given satisfy. */
const around = (clause: string, on?: string): readonly CaseRow[] => {
  const at = { clause, ...(on === undefined ? {} : { on }) };
  return [
    ['data center module with gas', { ...room, roomUse: 'modularDataCenter' }, 'yes', at],
    [
      'data center module, not asked',
      without({ ...room, roomUse: 'modularDataCenter' }, 'agentFlooded'),
      'unknown',
      at,
    ],
    ['switchgear room where gas was recorded', { ...room, roomUse: 'electricalRoom' }, 'yes', at],
    ...(['electricalRoom', 'transformerVault', 'batteryRoom', 'equipment'] as const).map(
      (roomUse): CaseRow => [
        `${roomUse}, not asked`,
        without({ ...room, roomUse }, 'agentFlooded'),
        'unknown',
        at,
      ],
    ),
    ['archive where gas was recorded', { ...room, roomUse: 'storage' }, 'yes', at],
    ['no such system', { ...room, agentFlooded: false }, 'no', at],
    ['office, not asked', without({ ...room, roomUse: 'office' }, 'agentFlooded'), 'no', at],
    ['server room, not asked', without(room, 'agentFlooded'), 'unknown', at],
  ];
};

export const R169Cases = cases(
  ...around('a'),
  ['server room with gas', room, 'yes', { clause: 'a', does: ['closer', 'gasketing'] }],
  ['sliding door', { ...room, doorType: 'slidingManual' }, 'no', { clause: 'a' }],
  ...around('b', 'magnet/safe/none'),
  ...onEach(
    [
      'delayedMagnet/safe/delayed',
      'magnet/safe/controlled',
      'mortiseLock/secure/clinical',
      'magnet/safe/lobby',
      'mechanicalLock/none/keyInside',
      'magnet/safe/credentialOut',
      'magnet/safe/buttonOnly',
      'magnet/safe/alarmOnly',
      'magnet/safe/none',
    ],
    'server room with gas',
    room,
    'yes',
    { clause: 'b', does: 'prohibit' },
  ),
  ...onEach(
    ['mortiseLock/secure/free', held, 'magnet/safe/doorSwitch'],
    'server room with gas',
    room,
    'no',
    'b',
  ),
  ...around('c', held),
  ...onEach([held, 'magnet/safe/doorSwitch'], 'server room with gas', room, 'yes', {
    clause: 'c',
    does: 'signOff must',
  }),
  ...onEach(['mortiseLock/secure/free', 'magnet/safe/none'], 'server room with gas', room, 'no', 'c'),
  ...around('d'),
  ['server room with gas', room, 'yes', { clause: 'd', does: 'signOff should' }],
  ['cabinet with gas', { ...room, egressRole: 'noOccupiedSpace' }, 'no', { clause: 'd' }],
  ...around('e'),
  ['swings in', room, 'yes', { clause: 'e', does: 'caution' }],
  ['swings out', { ...room, swingsWithEgress: true }, 'no', { clause: 'e' }],
  ['sliding door', { ...room, doorType: 'slidingManual' }, 'no', { clause: 'e' }],
);
