import type { CandidateMatch } from '../../devices/candidates.ts';
import type { CodeBasis } from '../../codes/basis.ts';
import type { FactValues } from '../../model/fields.ts';
import type { CaseRow, Does } from '../rule.ts';

/** Locks with a lever of their own, magnets and bolts: none of them is worked by a push bar. */
export const lockWithoutBar: CandidateMatch = {
  family: ['lock', 'magnet', 'bolt'],
  not: { release: ['sensor', 'doorSwitch', 'keyInside'] },
};
/** The same where the code leaves no case open for a magnet beside the bar. */
export const anyLockWithoutBar: CandidateMatch = {
  family: ['lock', 'magnet', 'bolt'],
  not: { release: ['keyInside'] },
};
/** These rely on what is on the leaf: lawful behind an exit device, not behind a lever or a bare magnet. */
export const latchNeedsBar: CandidateMatch = {
  family: ['strike', 'battery', 'mechanical', 'delayed'],
  exitDevice: false,
  not: { release: ['keyInside'] },
};
/** A magnet or bolt draws no latch: the lever lock that is on the leaf today would stay beside it. */
export const besideALeverLock: CandidateMatch = { family: ['magnet', 'bolt'] };
export const besideALeverLockMeant = [
  'magnet/safe/sensor',
  'shearMagnet/safe/doorSwitch',
  'boltMotor/safe/doorSwitch',
  'glassPatchLock/safe/sensor',
];
export const keyInside: CandidateMatch = { release: ['keyInside'] };
/** Whatever is a lock or brings one: with it on the leaf panic hardware is due, also where the leaf was only pushed. */
export const anyLock: CandidateMatch = {
  family: ['strike', 'magnet', 'bolt', 'lock', 'exitDevice', 'delayed', 'battery', 'mechanical', 'detention'],
};
/** Panic hardware comes with every lock but the key lock that the main-door case allows in its place. */
export const notKeyInside: CandidateMatch = { ...anyLock, not: { release: ['keyInside'] } };

export const lockWithoutBarMeant = [
  'mortiseLock/secure/free',
  'cylindricalLock/safe/controlled',
  'narrowStileLatch/secure/free',
  'gateLock/secure/free',
  'magnet/safe/none',
  'boltMotor/safe/alarmOnly',
  'glassPatchLock/safe/credentialOut',
];
export const heldByBarOrSensor = [
  'magnet/safe/sensor',
  'magnet/safe/doorSwitch',
  'boltMotor/safe/doorSwitch',
];
export const behindBar = [
  'strikeRim/secure/free',
  'exitTrim/secure/free',
  'latchRetractionMotor/secure/free',
  'glassRailExit/secure/free',
  'delayedExitDevice/safe/delayed',
  'detentionLock/none/attended',
];
export const latchNeedsBarMeant = [
  'strikeMortise/secure/free',
  'strikeCylindrical/safe/none',
  'batteryLock/asIs/free',
  'mechanicalLock/none/free',
  'delayedMagnet/safe/delayed',
];
/** One of each family that locks. */
export const oneOfEachLock = [
  'strikeRim/secure/free',
  'magnet/safe/doorSwitch',
  'boltMotor/safe/doorSwitch',
  'mortiseLock/secure/free',
  'exitTrim/secure/free',
  'delayedExitDevice/safe/delayed',
  'batteryLock/asIs/free',
  'mechanicalLock/none/free',
  'detentionLock/none/attended',
];
export const keyInsideMeant = ['mechanicalLock/none/keyInside', 'gateLock/secure/keyInside'];

export interface At {
  readonly clause: string;
  readonly on?: string;
  readonly basis?: Partial<CodeBasis>;
  /** Facts that the clause needs beside those of the row. */
  readonly facts?: FactValues;
  readonly does?: Does;
}

/** The same rows asked of several clauses. */
export function inEach(places: readonly At[], rows: readonly CaseRow[]): readonly CaseRow[] {
  return places.flatMap(({ clause, on, basis, facts: more, does }) =>
    rows.map(
      ([name, facts, expect, options]): CaseRow => [
        name,
        { ...more, ...facts },
        expect,
        {
          ...(on !== undefined && { on }),
          ...(expect === 'yes' && does !== undefined && { does }),
          ...options,
          clause,
          basis: { ...basis, ...options?.basis },
        },
      ],
    ),
  );
}

/** One facts, several candidates, several expectations. */
export function devicesOf(
  clause: string,
  facts: FactValues,
  meant: readonly string[],
  rest: readonly string[],
  basis: Partial<CodeBasis> = {},
): readonly CaseRow[] {
  return [
    ...meant.map((on): CaseRow => [`${on} is meant`, facts, 'yes', { clause, on, basis }]),
    ...rest.map((on): CaseRow => [`${on} is not meant`, facts, 'no', { clause, on, basis }]),
  ];
}
