import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';
import { bothCodes, bothLocked, locked, loneStairCases, nfpaOnly, noCode, open } from './given.ts';

const reentry = [
  'mortiseLock/safe/stairReentry',
  'cylindricalLock/safe/stairReentry',
  'exitTrim/safe/stairReentry',
];

const five = { ...locked, stairStories: 5 } as const;

const four = { ...locked, stairStories: 4 } as const;

const floor = { egressRole: 'stairEntry', stairLockWanted: 'floorSide' } as const;

const noHold = { wishDelayedEgress: false, wishControlledEgress: false } as const;

const delayedBar = 'delayedExitDevice/safe/delayed';

const b = { clause: 'b', on: 'mortiseLock/secure/free', basis: nfpaOnly } as const;

const c = { clause: 'c', on: 'mortiseLock/secure/free', basis: nfpaOnly } as const;

export const R54Cases = cases(
  ...onEach(
    [
      'strikeMortise/secure/free',
      'magnet/safe/sensor',
      'mortiseLock/secure/free',
      'mortiseLock/safe/free',
      'boltMotor/safe/doorSwitch',
      'exitTrim/secure/free',
    ],
    'stair side to be locked',
    locked,
    'yes',
    'a',
  ),
  ...onEach(reentry, 'stair side to be locked', locked, 'no', 'a'),
  [
    'both sides to be locked',
    bothLocked,
    'yes',
    { clause: 'a', on: 'exitTrim/secure/free', does: 'prohibit' },
  ],
  [
    'floor side only: the lock holds the stair side all the same',
    { egressRole: 'stairEntry', stairLockWanted: 'floorSide' },
    'yes',
    { clause: 'a', on: 'exitTrim/secure/free' },
  ],
  [
    'floor side only, delayed bar',
    { egressRole: 'stairEntry', stairLockWanted: 'floorSide' },
    'no',
    { clause: 'a', on: 'delayedExitDevice/safe/delayed' },
  ],
  [
    'floor side only, delayed magnet',
    { egressRole: 'stairEntry', stairLockWanted: 'floorSide' },
    'yes',
    { clause: 'a', on: 'delayedMagnet/safe/delayed' },
  ],
  ['both sides are to stay open', open, 'yes', { clause: 'a', on: 'exitTrim/secure/free' }],
  [
    'not a stair door',
    { egressRole: 'exitAccess', stairLockWanted: 'stairSide' },
    'no',
    { clause: 'a', on: 'exitTrim/secure/free' },
  ],
  ['wish not asked', { egressRole: 'stairEntry' }, 'yes', { clause: 'a', on: 'exitTrim/secure/free' }],
  ['role not known', {}, 'unknown', { clause: 'a', on: 'exitTrim/secure/free' }],
  [
    'IBC and NFPA 101 both adopted: IBC governs',
    { ...four },
    'yes',
    { clause: 'a', on: 'exitTrim/secure/free', basis: bothCodes },
  ],
  ['NFPA 101 alone', four, 'no', { clause: 'a', on: 'exitTrim/secure/free', basis: nfpaOnly }],
  ['battery and mechanical locks are R-59', locked, 'no', { clause: 'a', on: 'batteryLock/asIs/free' }],
  ['detention goes to its own rules', locked, 'no', { clause: 'a', on: 'detentionLock/none/attended' }],
  ...loneStairCases('no', 'yes', { clause: 'a', on: 'exitTrim/secure/free' }),
  [
    'single exit stair, group not known',
    { ...locked, singleExitStair: true },
    'unknown',
    { clause: 'a', on: 'exitTrim/secure/free' },
  ],
  ['NFPA 101 alone, five stories', five, 'yes', { ...b, does: 'prohibit' }],
  ['five stories, battery lock', five, 'yes', { ...b, on: 'batteryLock/asIs/free' }],
  ['five stories, lock with stair release', five, 'no', { ...b, on: 'exitTrim/safe/stairReentry' }],
  ['five stories, detention lock', five, 'no', { ...b, on: 'detentionLock/none/attended' }],
  ['four stories', four, 'no', b],
  ['five stories, selected re-entry planned', { ...five, selectedReentry: true }, 'no', b],
  ['five stories, no selected re-entry', { ...five, selectedReentry: false }, 'yes', b],
  ['five stories, single exit stair', { ...five, singleExitStair: true }, 'no', b],
  ['five stories, two stairs', { ...five, singleExitStair: false }, 'yes', b],
  ['five stories, both sides to stay open', { ...open, stairStories: 5 }, 'yes', b],
  ['five stories, a lever of passage function', five, 'no', { ...b, on: 'mechanicalLock/none/free' }],
  ['five stories, both codes adopted', five, 'no', { ...b, basis: bothCodes }],
  ['five stories, no code chosen', five, 'no', { ...b, basis: noCode }],
  ['stories not known', locked, 'unknown', b],
  ['four stories', four, 'yes', { ...c, does: 'permit' }],
  ['five stories', five, 'no', c],
  ['four stories, stair side open', { ...open, stairStories: 4 }, 'no', c],
  ['four stories, both codes adopted', four, 'no', { ...c, basis: bothCodes }],
  ['four stories, no code chosen', four, 'no', { ...c, basis: noCode }],
  ['four stories, magnet is not waved through', four, 'no', { ...c, on: 'magnet/safe/sensor' }],
  ['four stories, strike gives up the latch', four, 'no', { ...c, on: 'strikeMortise/secure/free' }],
  ['four stories, clinical lock', four, 'no', { ...c, on: 'batteryLock/asIs/clinical' }],
  ['stories not known', locked, 'unknown', c],
  ...onEach(reentry, 'stair side stays open', open, 'yes', 'd'),
  [
    'office door',
    { egressRole: 'exitAccess' },
    'yes',
    { clause: 'd', on: 'exitTrim/safe/stairReentry', does: 'prohibit' },
  ],
  ['stair side to be locked', locked, 'no', { clause: 'd', on: 'exitTrim/safe/stairReentry' }],
  ['an ordinary lock is not meant', open, 'no', { clause: 'd', on: 'exitTrim/safe/free' }],
  ['role not known', {}, 'unknown', { clause: 'd', on: 'exitTrim/safe/stairReentry' }],
  ['NFPA 101 alone', four, 'yes', { clause: 'e', basis: nfpaOnly, does: 'signOff must' }],
  ['no code chosen', four, 'yes', { clause: 'e', basis: noCode }],
  ['IBC: asked in R-55', four, 'no', { clause: 'e' }],
  ['stair side open', open, 'no', { clause: 'e', basis: nfpaOnly }],
  ['wish not asked', { egressRole: 'stairEntry' }, 'unknown', { clause: 'e', basis: nfpaOnly }],
  [
    'both sides open, reader wished for',
    { ...open, readerSides: 'secure' },
    'yes',
    { clause: 'f', does: 'refuse stairLockWanted' },
  ],
  ['both sides open, no reader', { ...open, readerSides: 'none' }, 'no', { clause: 'f' }],
  ['stair side to be locked, reader', { ...locked, readerSides: 'secure' }, 'no', { clause: 'f' }],
  [
    'office door with a reader',
    { ...open, egressRole: 'exitAccess', readerSides: 'secure' },
    'no',
    { clause: 'f' },
  ],
  ['reader not asked', open, 'unknown', { clause: 'f' }],
  [
    'floor side to be locked, reader, no delay',
    { ...floor, readerSides: 'secure', ...noHold },
    'yes',
    { clause: 'g', does: 'refuse stairLockWanted' },
  ],
  [
    'the same with a delay',
    { ...floor, readerSides: 'secure', ...noHold, wishDelayedEgress: true },
    'no',
    { clause: 'g' },
  ],
  [
    'the same held by staff',
    { ...floor, readerSides: 'secure', ...noHold, wishControlledEgress: true },
    'no',
    { clause: 'g' },
  ],
  ['floor side to be locked, no reader', { ...floor, readerSides: 'none', ...noHold }, 'no', { clause: 'g' }],
  ['stair side to be locked, reader', { ...locked, readerSides: 'secure', ...noHold }, 'no', { clause: 'g' }],
  ['floor side, reader not asked', { ...floor, ...noHold }, 'unknown', { clause: 'g' }],
  [
    'office door',
    { ...floor, egressRole: 'exitAccess', readerSides: 'secure', ...noHold },
    'no',
    { clause: 'g' },
  ],
  ['stair side locked', locked, 'yes', { clause: 'h', on: delayedBar, does: 'prohibit' }],
  ['stair side locked, NFPA 101 alone', locked, 'yes', { clause: 'h', on: delayedBar, basis: nfpaOnly }],
  ['stair side locked, no code chosen', locked, 'no', { clause: 'h', on: delayedBar, basis: noCode }],
  ['floor side locked', floor, 'no', { clause: 'h', on: delayedBar }],
  ['wish not asked', { egressRole: 'stairEntry' }, 'unknown', { clause: 'h', on: delayedBar }],
);
