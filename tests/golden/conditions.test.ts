// What every condition does at openings wired and built in every way that differs: state of the door, alarm, sentence, findings.
import { readFileSync, writeFileSync } from 'node:fs';
import process from 'node:process';
import { expect, it } from 'vitest';
import type { Arrangement, Setting } from '../../src/domain/arrangement/arrangement.ts';
import { defaultBasis } from '../../src/domain/codes/basis.ts';
import { conditionIds } from '../../src/domain/simulate/conditions.ts';
import { expectedInWords, onFireAlarm } from '../../src/domain/simulate/outcomeWords.ts';
import { thingInWords } from '../../src/domain/simulate/sentences.ts';
import { runArrangement, standing } from '../../src/domain/simulate/simulate.ts';

const bare = { kind: 'none', latches: false, outsideLocked: 'no', heldByHand: false } as const;
const lever = { kind: 'lever', latches: true, outsideLocked: 'yes', heldByHand: false } as const;
const magnet: Arrangement = {
  device: 'magnet',
  failMode: 'safe',
  release: 'sensor',
  motor: false,
  sensor: 'failsOpen',
  button: 'direct',
  hardwareSwitch: 'none',
  alarmCuts: true,
  flowCuts: true,
  commandCuts: false,
  latch: 'never',
  leafLock: bare,
  lockedOutsideBy: 'device',
  releaseOnBothSides: true,
  freeHardware: false,
  battery: 'yes',
  batteryHours: null,
  reader: true,
  scheduled: false,
  reportsPosition: true,
  exitSignal: true,
  delayS: 15,
  interlock: 'none',
  staffDirect: false,
  staffReached: false,
  fireAlarm: 'yes',
  sprinklers: 'yes',
};
const strike: Arrangement = {
  ...magnet,
  device: 'strikeMortise',
  failMode: 'secure',
  release: 'free',
  sensor: 'none',
  button: 'none',
  alarmCuts: false,
  flowCuts: false,
  latch: 'whileLocked',
  releaseOnBothSides: false,
  freeHardware: true,
};
const lock: Arrangement = { ...strike, device: 'mortiseLock', latch: 'always' };
const trim: Arrangement = { ...lock, device: 'exitTrim', failMode: 'safe', release: 'stairReentry' };
const cells: Arrangement = { ...lock, device: 'batteryLock', failMode: 'asIs', battery: 'no' };
const keyed: Arrangement = {
  ...lock,
  device: 'mechanicalLock',
  failMode: 'none',
  reader: false,
  lockedOutsideBy: 'leafLock',
  leafLock: lever,
};
const lobby: Arrangement = {
  ...magnet,
  release: 'lobby',
  sensor: 'none',
  button: 'none',
  staffReached: true,
};

const office: Setting = {
  basis: defaultBasis,
  rated: false,
  staysOpen: false,
  personBehind: true,
  stairEntry: false,
  loneStair: false,
  stairStories: undefined,
  selectedReentry: false,
  peopleOnLockedSide: false,
  openWhileOccupied: false,
  secure: false,
  operatorDrives: false,
  powerSource: undefined,
  lockFunctionKnown: true,
};
const stair: Setting = { ...office, stairEntry: true, rated: true, stairStories: 6 };
const ibc2024 = { ...defaultBasis, ibc: 2024 } as const;
const nfpaAlone = { ...defaultBasis, ibc: null, nfpa101: 2021 } as const;

/** Those after the first are told where they differ from the one named `like`. */
const openings: Readonly<Record<string, readonly [Arrangement, Setting?, string?]>> = {
  'magnet, sensor and button': [magnet],
  'no battery': [{ ...magnet, battery: 'no' }, office, 'magnet, sensor and button'],
  'battery not known, secure room': [
    { ...magnet, battery: 'notKnown', batteryHours: 4 },
    { ...office, secure: true },
    'magnet, sensor and button',
  ],
  'secure room on a battery': [
    { ...magnet, batteryHours: 4 },
    { ...office, secure: true },
    'magnet, sensor and button',
  ],
  'secure room, battery without hours': [magnet, { ...office, secure: true }, 'magnet, sensor and button'],
  scheduled: [{ ...magnet, scheduled: true }, office, 'magnet, sensor and button'],
  'sensor that does not fail open': [{ ...magnet, sensor: 'plain' }, office, 'magnet, sensor and button'],
  'no reader, no alarm, no sprinklers': [
    { ...magnet, reader: false, fireAlarm: 'no', sprinklers: 'no', alarmCuts: false, flowCuts: false },
    office,
    'magnet, sensor and button',
  ],
  'flow cuts, the alarm does not': [{ ...magnet, alarmCuts: false }, office, 'magnet, sensor and button'],
  'remote release': [{ ...magnet, commandCuts: true }, office, 'magnet, sensor and button'],
  'neither position nor exit signal': [
    { ...magnet, reportsPosition: false, exitSignal: false },
    office,
    'magnet, sensor and button',
  ],
  'position without exit signal': [{ ...magnet, exitSignal: false }, office, 'magnet, sensor and button'],
  'interlock on entry': [{ ...magnet, interlock: 'entry' }, office, 'magnet, sensor and button'],
  'interlock that holds': [{ ...magnet, interlock: 'holds' }, office, 'magnet, sensor and button'],
  'interlock nobody knows': [{ ...magnet, interlock: 'notKnown' }, office, 'magnet, sensor and button'],
  'leaf with a lever locked outside': [
    { ...magnet, leafLock: lever, lockedOutsideBy: 'both', latch: 'always' },
    { ...office, rated: true },
    'magnet, sensor and button',
  ],
  'leaf with a bar, trim not surveyed': [
    {
      ...magnet,
      leafLock: { kind: 'bar', latches: true, outsideLocked: 'notKnown', heldByHand: false },
      lockedOutsideBy: 'both',
      latch: 'always',
    },
    office,
    'magnet, sensor and button',
  ],
  'leaf with a hand bolt': [
    {
      ...magnet,
      leafLock: { kind: 'handBolt', latches: true, outsideLocked: 'yes', heldByHand: true },
      lockedOutsideBy: 'both',
    },
    office,
    'magnet, sensor and button',
  ],
  'rated, not latched': [magnet, { ...office, rated: true }, 'magnet, sensor and button'],
  'rated, stays open, no alarm, scheduled': [
    { ...magnet, fireAlarm: 'no', scheduled: true, latch: 'whileLocked' },
    { ...office, rated: true, staysOpen: true },
    'magnet, sensor and button',
  ],
  'fed by the fire alarm panel for hours': [
    { ...magnet, batteryHours: 24 },
    { ...office, powerSource: 'fireAlarmPanel' },
    'magnet, sensor and button',
  ],
  'fed by the fire alarm panel for ten minutes': [
    { ...magnet, batteryHours: 1 / 6 },
    { ...office, powerSource: 'fireAlarmPanel' },
    'magnet, sensor and button',
  ],
  'fed by the fire alarm panel, hours not stated': [
    magnet,
    { ...office, powerSource: 'fireAlarmPanel' },
    'magnet, sensor and button',
  ],
  'no NFPA 72 adopted': [
    magnet,
    { ...office, powerSource: 'fireAlarmPanel', basis: { ...defaultBasis, nfpa72: null } },
    'magnet, sensor and button',
  ],
  'fed by the fire alarm panel, no battery': [
    { ...magnet, battery: 'no', batteryHours: 1 },
    { ...office, powerSource: 'fireAlarmPanel' },
    'magnet, sensor and button',
  ],
  'fed by the fire alarm panel for half an hour': [
    { ...magnet, batteryHours: 0.5 },
    { ...office, powerSource: 'fireAlarmPanel' },
    'magnet, sensor and button',
  ],
  'fed by the fire alarm panel for an hour': [
    { ...magnet, batteryHours: 1 },
    { ...office, powerSource: 'fireAlarmPanel' },
    'magnet, sensor and button',
  ],
  'function of its lever not surveyed': [
    magnet,
    { ...office, lockFunctionKnown: false },
    'magnet, sensor and button',
  ],
  'sensor without a button': [{ ...magnet, button: 'none' }, office, 'magnet, sensor and button'],
  'leaf with a passage lever': [
    { ...magnet, leafLock: { ...lever, outsideLocked: 'no' }, lockedOutsideBy: 'both', latch: 'always' },
    office,
    'magnet, sensor and button',
  ],
  'locked lever, scheduled, not on the alarm': [
    {
      ...magnet,
      leafLock: lever,
      lockedOutsideBy: 'both',
      latch: 'always',
      scheduled: true,
      alarmCuts: false,
    },
    office,
    'leaf with a lever locked outside',
  ],
  'nobody behind it': [
    { ...magnet, release: 'none', sensor: 'none', button: 'none', interlock: 'holds' },
    { ...office, personBehind: false, peopleOnLockedSide: true, powerSource: 'fireAlarmPanel' },
  ],
  'magnet, button through the controller': [
    { ...magnet, release: 'buttonOnly', sensor: 'none', button: 'asksController' },
  ],
  'magnet, switch in the hardware': [
    { ...magnet, release: 'doorSwitch', sensor: 'none', button: 'none', hardwareSwitch: 'direct' },
  ],
  'switch through the controller': [
    { ...magnet, release: 'doorSwitch', sensor: 'none', button: 'none', hardwareSwitch: 'asksController' },
    office,
    'magnet, switch in the hardware',
  ],
  'magnet, alarm alone': [{ ...magnet, release: 'alarmOnly', sensor: 'none', button: 'none' }],
  'and no exit signal': [
    { ...magnet, release: 'alarmOnly', sensor: 'none', button: 'none', exitSignal: false },
    office,
    'magnet, alarm alone',
  ],
  'magnet, credential to leave': [{ ...magnet, release: 'credentialOut', sensor: 'none', button: 'none' }],
  'motor bolt, fail safe': [{ ...magnet, device: 'boltMotor', motor: true, latch: 'whileLocked' }],
  'motor bolt, fail secure': [
    {
      ...magnet,
      device: 'boltMotor',
      motor: true,
      failMode: 'secure',
      latch: 'whileLocked',
      scheduled: true,
    },
  ],
  'delayed, scheduled': [
    {
      ...magnet,
      device: 'delayedMagnet',
      release: 'delayed',
      sensor: 'none',
      button: 'none',
      scheduled: true,
      delayS: 30,
      commandCuts: true,
    },
    { ...office, peopleOnLockedSide: true },
  ],
  'not on the alarm': [
    {
      ...magnet,
      device: 'delayedMagnet',
      release: 'delayed',
      sensor: 'none',
      button: 'none',
      scheduled: true,
      delayS: 30,
      alarmCuts: false,
      flowCuts: false,
    },
    { ...office, peopleOnLockedSide: true },
    'delayed, scheduled',
  ],
  'delayed, without contact': [
    {
      ...magnet,
      device: 'delayedMagnet',
      release: 'delayed',
      sensor: 'none',
      button: 'none',
      reportsPosition: false,
      releaseOnBothSides: false,
    },
    { ...office, peopleOnLockedSide: true },
  ],
  'delayed bar with an open trim': [
    {
      ...magnet,
      device: 'delayedExitDevice',
      release: 'delayed',
      sensor: 'none',
      button: 'none',
      latch: 'always',
      leafLock: { ...lever, kind: 'bar', outsideLocked: 'no' },
      lockedOutsideBy: 'leafLock',
    },
  ],
  'controlled egress': [
    { ...magnet, release: 'controlled', sensor: 'none', button: 'none', commandCuts: true },
    { ...office, peopleOnLockedSide: true },
  ],
  'staff open without the controller': [
    { ...magnet, release: 'controlled', sensor: 'none', button: 'none', staffDirect: true },
    office,
    'controlled egress',
  ],
  clinical: [{ ...magnet, release: 'clinical', sensor: 'none', button: 'none', alarmCuts: false }],
  attended: [{ ...magnet, release: 'attended', sensor: 'none', button: 'none' }],
  'elevator lobby': [lobby, { ...office, peopleOnLockedSide: true }],
  'nobody can be called': [
    { ...lobby, staffReached: false },
    { ...office, peopleOnLockedSide: true },
    'elevator lobby',
  ],
  'lever locked toward the lobby': [
    { ...lobby, leafLock: lever, lockedOutsideBy: 'both' },
    office,
    'elevator lobby',
  ],
  'strike, fail secure': [strike],
  'strike, scheduled': [{ ...strike, scheduled: true }, { ...office, rated: true }, 'strike, fail secure'],
  'scheduled, battery not known': [
    { ...strike, scheduled: true, battery: 'notKnown' },
    office,
    'strike, fail secure',
  ],
  'scheduled, no battery': [{ ...strike, scheduled: true, battery: 'no' }, office, 'strike, fail secure'],
  'scheduled, alarm cuts': [
    { ...strike, scheduled: true, alarmCuts: true, flowCuts: true, commandCuts: true },
    { ...office, secure: true },
    'strike, fail secure',
  ],
  'fail-secure strike on a leaf nothing inside opens': [
    { ...strike, freeHardware: false },
    { ...office, peopleOnLockedSide: true },
    'strike, fail secure',
  ],
  'fail-secure strike with sensor and button': [
    { ...strike, release: 'sensor', sensor: 'failsOpen', button: 'direct', freeHardware: false },
    office,
    'strike, fail secure',
  ],
  'button through the controller': [
    { ...strike, release: 'sensor', sensor: 'plain', button: 'asksController', freeHardware: false },
    office,
    'fail-secure strike with sensor and button',
  ],
  'scheduled, battery not known, no latch': [
    { ...strike, scheduled: true, battery: 'notKnown', latch: 'never' },
    office,
    'scheduled, battery not known',
  ],
  'beside a locked lever': [
    { ...strike, lockedOutsideBy: 'both', leafLock: lever, commandCuts: true, scheduled: true },
    office,
    'strike, fail secure',
  ],
  'strike, fail safe, rated': [
    { ...strike, failMode: 'safe', alarmCuts: true },
    { ...office, rated: true, secure: true },
  ],
  'lock, fail safe, kept locked by its leaf': [
    { ...lock, failMode: 'safe', lockedOutsideBy: 'both', leafLock: lever },
    { ...office, operatorDrives: true },
  ],
  'lock, sensor dead behind it': [
    { ...lock, failMode: 'safe', release: 'sensor', sensor: 'plain', button: 'asksController' },
  ],
  'stair side, IBC 2021': [
    { ...trim, commandCuts: true },
    { ...stair, secure: true },
  ],
  'IBC 2024, alarm frees it not': [
    { ...trim, commandCuts: true },
    { ...stair, basis: ibc2024 },
    'stair side, IBC 2021',
  ],
  'IBC 2024, alarm frees it': [
    { ...trim, commandCuts: true, alarmCuts: true },
    { ...stair, basis: ibc2024, secure: true },
    'stair side, IBC 2021',
  ],
  'IBC 2024, no alarm in the building': [
    { ...trim, fireAlarm: 'no' },
    { ...stair, basis: ibc2024 },
    'stair side, IBC 2021',
  ],
  'NFPA 101 alone, six stories': [trim, { ...stair, basis: nfpaAlone }, 'stair side, IBC 2021'],
  'NFPA 101 alone, four stories': [
    trim,
    { ...stair, basis: nfpaAlone, stairStories: 4 },
    'stair side, IBC 2021',
  ],
  'NFPA 101 alone, five stories': [
    trim,
    { ...stair, basis: nfpaAlone, stairStories: 5 },
    'stair side, IBC 2021',
  ],
  'NFPA 101 alone, stories not known': [
    trim,
    { ...stair, basis: nfpaAlone, stairStories: undefined },
    'stair side, IBC 2021',
  ],
  'NFPA 101 alone, selected re-entry': [
    trim,
    { ...stair, basis: nfpaAlone, selectedReentry: true },
    'stair side, IBC 2021',
  ],
  'both codes, selected re-entry': [
    { ...trim, commandCuts: true },
    { ...stair, basis: { ...nfpaAlone, ibc: 2021 }, selectedReentry: true },
    'stair side, IBC 2021',
  ],
  'the only stair': [trim, { ...stair, basis: ibc2024, loneStair: true }, 'stair side, IBC 2021'],
  'stair side, fail secure': [{ ...trim, failMode: 'secure', commandCuts: true }, stair],
  'fed by the fire alarm panel': [
    { ...trim, commandCuts: true },
    { ...stair, powerSource: 'fireAlarmPanel' },
    'stair side, IBC 2021',
  ],
  'stair side with a passage set, no alarm': [
    { ...keyed, fireAlarm: 'no', leafLock: { ...lever, outsideLocked: 'no' } },
    { ...stair, basis: ibc2024, secure: true },
  ],
  'battery lockset, scheduled': [
    { ...cells, scheduled: true },
    { ...office, rated: true },
  ],
  'battery lockset without reader, at an operator': [
    { ...cells, reader: false },
    { ...office, operatorDrives: true },
    'battery lockset, scheduled',
  ],
  'battery lockset, a contact of the alarm beside it': [
    { ...cells, scheduled: true, alarmCuts: true },
    office,
    'battery lockset, scheduled',
  ],
  'lock of the operator, scheduled': [
    { ...cells, device: 'operatorControl', latch: 'never', scheduled: true },
    { ...office, peopleOnLockedSide: true },
  ],
  'mechanical lock': [keyed, { ...office, peopleOnLockedSide: true }],
  'mechanical lock, function not surveyed': [
    { ...keyed, leafLock: { ...lever, outsideLocked: 'notKnown' } },
    { ...office, lockFunctionKnown: false },
  ],
  'reader on file, lock worked by staff': [
    { ...keyed, release: 'clinical', reader: true, lockedOutsideBy: 'device', leafLock: bare },
    office,
    'mechanical lock',
  ],
  'passage set': [{ ...keyed, leafLock: { ...lever, outsideLocked: 'no' } }],
  'push and pull': [{ ...keyed, device: 'noLock', leafLock: bare, latch: 'never' }],
  'keyed from inside': [
    { ...keyed, release: 'keyInside' },
    { ...office, openWhileOccupied: true },
  ],
};

function linesOf(name: string): Readonly<Record<string, string>> {
  const given = openings[name];
  if (!given) throw new Error(`There is no opening “${name}”.`);
  const [arrangement, setting = office] = given;
  const { outcomes, findings } = runArrangement({ arrangement, setting });
  return {
    ...Object.fromEntries(
      conditionIds.map((id) => {
        const one = outcomes[id];
        const worst = one.hours ? ` Judged by: ${one.exit}, latched ${one.latched}.` : '';
        return [
          id,
          one.applies
            ? `${one.says} [${expectedInWords(one)}]${worst}`
            : `– ${one.says}${one.alarm ? ' [alarm raised]' : ''}`,
        ];
      }),
    ),
    'fire alarm in short': onFireAlarm(arrangement, outcomes),
    ...Object.fromEntries(
      findings.map((one, index) => [
        `finding ${index + 1}`,
        `${one.severity}, ${one.kind} (${one.conditions.join(', ')}): ${one.says}`,
      ]),
    ),
  };
}

function text(): string {
  return Object.entries(openings)
    .flatMap(([name, [, , like]]) => {
      const lines = linesOf(name);
      const known = like === undefined ? {} : linesOf(like);
      const gone = Object.keys(known).filter((key) => lines[key] === undefined);
      return [
        like === undefined ? `## ${name}` : `## ${name}, else as “${like}”`,
        ...Object.entries(lines).flatMap(([key, line]) => (known[key] === line ? [] : [`${key}: ${line}`])),
        ...gone.map((key) => `${key}: no longer`),
        '',
      ];
    })
    .join('\n');
}

it('what happens when, is what was read and accepted', () => {
  const file = new URL('conditions.txt', import.meta.url);
  if (process.env['LATCHWARD_ACCEPT'] !== undefined) writeFileSync(file, text());
  expect(text().split('\n'), 'Read the difference; accept it with LATCHWARD_ACCEPT=1.').toEqual(
    readFileSync(file, 'utf8').split('\n'),
  );
});

it('where a condition of the building does not apply, the opening is as in locked hours', () => {
  const { outcomes } = runArrangement({ arrangement: { ...magnet, sprinklers: 'no' }, setting: office });
  expect(standing(outcomes, 'fireAlarm')).toBe(outcomes.fireAlarm);
  expect(standing(outcomes, 'sprinklerFlow')).toBe(outcomes.lockedHours);
  expect(thingInWords('mechanicalLock')).toBe('lockset');
});
