import { onEach } from '../onEach.ts';
import { doing } from '../doing.ts';
import { type CaseRow, cases } from '../rule.ts';
import { without } from '../without.ts';

const pair = {
  egressRole: 'crossCorridor',
  wallKind: 'smokeBarrier',
  occupancyGroup: 'I-2',
  roomUse: 'corridor',
  doorType: 'doubleEgressPair',
} as const;

function around(clause: string, on?: string): readonly CaseRow[] {
  const at = { clause, ...(on === undefined ? {} : { on }) };
  return [
    ['hospital smoke barrier', pair, 'yes', at],
    ['assisted living, condition 2', { ...pair, occupancyGroup: 'I-1.2' }, 'yes', at],
    ['ambulatory care unit in B', { ...pair, occupancyGroup: 'B', roomUse: 'patientUnit' }, 'yes', at],
    ['office corridor in B', { ...pair, occupancyGroup: 'B' }, 'no', at],
    ['room door', { ...pair, egressRole: 'exitAccess' }, 'no', at],
    ['ordinary wall', { ...pair, wallKind: 'none' }, 'no', at],
    ['wall not known', without(pair, 'wallKind'), 'unknown', at],
  ];
}

const locked = 'mechanicalLock/none/keyInside';

export const R131Cases = cases(
  ...doing({ a: ['closer', 'smokeHoldOpen'], c: 'signOff must', d: 'caution' }, [
    ...around('a'),
    ...around('b', locked),
    ...onEach(
      [
        'mortiseLock/secure/credentialOut',
        'magnet/safe/buttonOnly',
        'magnet/safe/alarmOnly',
        'magnet/safe/none',
        'detentionLock/none/attended',
        'magnet/safe/lobby',
      ],
      'hospital smoke barrier',
      pair,
      'yes',
      { clause: 'b', does: 'prohibit' },
    ),
    ...onEach(
      ['exitTrim/secure/free', 'magnet/safe/controlled', 'magnet/safe/sensor'],
      'hospital smoke barrier',
      pair,
      'no',
      'b',
    ),
    ...around('c'),
    ...around('d'),
    ['single leaf', { ...pair, doorType: 'single' }, 'no', { clause: 'd' }],
  ]),
);
