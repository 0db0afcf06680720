import type { DeviceId } from '../devices/devices.ts';
import { midSentence, startSentence } from '../text/midSentence.ts';
import type { Arrangement } from '../arrangement/arrangement.ts';
import type { Moment } from './circuit.ts';
import { condition, type ConditionId } from './conditions.ts';
import type { Outcome } from './outcome.ts';
import { inUnlockedHours } from './stateWords.ts';

/** Every sentence of this room. Screens and sheets print them; they never put any together. */

const things: Readonly<Record<DeviceId, string>> = {
  strikeMortise: 'strike',
  strikeCylindrical: 'strike',
  strikeRim: 'strike',
  magnet: 'magnet',
  shearMagnet: 'magnet',
  boltSolenoid: 'bolt',
  boltMotor: 'bolt',
  mortiseLock: 'lock',
  cylindricalLock: 'lock',
  exitTrim: 'outside trim',
  latchRetractionMotor: 'latch retraction',
  latchRetractionSolenoid: 'latch retraction',
  delayedExitDevice: 'delayed exit device',
  delayedMagnet: 'delayed magnet',
  glassPatchLock: 'glass lock',
  glassRailExit: 'rail device',
  narrowStileLatch: 'latch',
  gateLock: 'gate lock',
  batteryLock: 'battery lockset',
  mechanicalLock: 'lockset',
  noLock: 'push and pull',
  operatorControl: 'lock of the operator',
  detentionLock: 'detention lock',
};
export function thingInWords(id: DeviceId): string {
  return things[id];
}

/** Why a condition says nothing at this opening; undefined where it applies. */
export function notApplyingInWords(arrangement: Arrangement, id: ConditionId): string | undefined {
  const wired = arrangement.failMode === 'safe' || arrangement.failMode === 'secure';
  switch (id) {
    case 'unlockedHours':
    case 'mainsLostUnlocked':
      return arrangement.scheduled || arrangement.release === 'keyInside'
        ? undefined
        : 'No scheduled hours are requested here.';
    case 'validCredential':
    case 'refusedCredential':
      return arrangement.reader && (wired || arrangement.failMode === 'asIs')
        ? undefined
        : 'No credential is read here; a key opens it.';
    case 'mainsLost':
    case 'batterySpent':
      return arrangement.failMode === 'none'
        ? 'No power feeds this lock, so losing it changes nothing.'
        : undefined;
    case 'supplyLost':
    case 'relayStuckReleased':
    case 'relayStuckLocked':
      return wired ? undefined : 'This lock has no lock supply and no controller relay.';
    case 'fireAlarm':
    case 'fireAlarmMainsLost':
      return arrangement.fireAlarm === 'no'
        ? 'The building has neither fire alarm nor automatic detection.'
        : undefined;
    case 'sprinklerFlow':
      return arrangement.sprinklers === 'no' ? 'The building is not sprinklered throughout.' : undefined;
    case 'releaseCommand':
      // A stair asks for the command, so it is tried there also where nothing was wired for it.
      return arrangement.commandCuts || arrangement.release === 'stairReentry'
        ? undefined
        : 'Nothing here is released remotely.';
    case 'sensorFailed':
      return arrangement.sensor === 'none' ? 'There is no exit sensor here.' : undefined;
    case 'buttonDeadController':
      return arrangement.button === 'none' ? 'There is no exit button here.' : undefined;
    case 'exitReleasesFailed':
      return arrangement.sensor === 'none' || arrangement.button === 'none'
        ? 'There is no sensor with an exit button here.'
        : undefined;
    case 'interlockFailed':
      return arrangement.interlock === 'none' ? 'This door is not part of an interlock.' : undefined;
    case 'cellsSpent':
      return arrangement.device === 'batteryLock' ? undefined : 'No lock here runs on its own batteries.';
    default:
      return undefined;
  }
}

/** "{what the lock does and why}; {what a person leaving meets}." */
export function outcomeInWords(
  arrangement: Arrangement,
  outcome: Omit<Outcome, 'says'>,
  rest: Moment,
): string {
  const { at } = condition(outcome.condition).situation;
  if (at === 'held') {
    return outcome.alarm
      ? 'The open leaf secures nothing; its contact reports it after the set time.'
      : 'The open leaf secures nothing, and no contact reports it.';
  }
  const forced =
    at === 'forced'
      ? outcome.alarm
        ? 'no one released it, so the contact reports it as forced, and '
        : 'no contact would report it, and '
      : '';
  const { hours } = outcome;
  const now = hours ? { ...outcome, ...hours.locked } : outcome;
  const otherwise = hours ? ` ${startSentence(inUnlockedHours(hours.unlocked))}.` : '';
  return `${startSentence(
    `${forced}${lockClause(arrangement, outcome.condition, rest)}${leafLockClause(arrangement, outcome, rest)}; ${exitClause(arrangement, now, rest)}.`,
  )}${otherwise}`;
}

/** What the lock of the leaf adds where the device alone would say something else. */
function leafLockClause(
  { lockedOutsideBy, leafLock }: Arrangement,
  { entry }: Pick<Outcome, 'entry'>,
  rest: Moment,
): string {
  if (lockedOutsideBy === 'device' || rest.locked === (entry === 'locked')) return '';
  if (entry === 'unlocked') return ', while its trim opens from outside';
  return leafLock.kind === 'handBolt'
    ? ', but the bolt of the leaf stays locked'
    : `, but the ${leafLock.kind === 'bar' ? 'trim of the bar' : 'lever'} stays locked outside${
        leafLock.outsideLocked === 'notKnown' ? ' as far as surveyed' : ''
      }`;
}

function lockClause(arrangement: Arrangement, id: ConditionId, rest: Moment): string {
  const thing = `the ${things[arrangement.device]}`;
  const leafHolds = arrangement.lockedOutsideBy === 'both' && arrangement.leafLock.outsideLocked !== 'no';
  const { situation } = condition(id);
  switch (arrangement.failMode) {
    case 'none':
      return rest.locked
        ? arrangement.leafLock.outsideLocked === 'notKnown'
          ? `${thing} needs no power and is counted as locked outside, which was not surveyed`
          : `${thing} needs no power and stays locked outside`
        : 'nothing locks the outside';
    case 'asIs':
      if (arrangement.device === 'operatorControl') {
        return rest.locked
          ? `${thing} stays as it was, locked outside`
          : `${thing} ${situation.credential ? 'takes the credential' : 'was set unlocked'} and the leaf is moved`;
      }
      if (!situation.cells)
        return `${thing} has no charge left and stays as it was; the key opens it from outside`;
      return rest.locked
        ? `${thing} runs on its own batteries and stays as it was, locked outside`
        : `${thing} ${situation.credential ? 'accepts the credential' : 'was set unlocked'} on its own batteries`;
    case 'safe':
      if (rest.locked) {
        if (situation.interlock === 'held') return `the interlock holds ${thing}`;
        return !situation.mains
          ? `the battery still feeds ${thing}, which ${arrangement.motor ? 'stays thrown' : 'goes on holding'}`
          : arrangement.motor
            ? `${thing} stays thrown while power is on`
            : `current holds ${thing}`;
      }
      return `${releaseCause(arrangement, id, rest)}, so ${thing} ${leafHolds ? 'no longer holds' : 'lets go'}`;
    case 'secure':
      if (!rest.locked)
        return `${releaseCause(arrangement, id, rest)}, so ${thing} ${leafHolds ? 'no longer holds' : 'gives way'}`;
      if (rest.released && rest.cut) return `${cutCause(arrangement, id)}, so ${thing} goes back to locked`;
      if (rest.released && arrangement.battery === 'notKnown' && !situation.mains && situation.charged) {
        return `no battery is confirmed here, and without one ${thing} has no power to release with and locks`;
      }
      if (rest.released) return `${thing} has no power to release with and stays locked`;
      return `${thing} needs no power to stay locked`;
  }
}

function releaseCause(arrangement: Arrangement, id: ConditionId, rest: Moment): string {
  const { situation } = condition(id);
  if (arrangement.failMode === 'safe') {
    if (!rest.fed) return situation.mains ? 'lock power is gone' : 'line power and battery are gone';
    if (rest.cut) return cutCause(arrangement, id);
  }
  if (situation.relay === 'stuckReleased') return 'the relay is in its released position';
  if (situation.unlockedHours) return 'the schedule releases it';
  if (situation.credential) return 'the credential releases it';
  if (!situation.sensorWorks && situation.relay === 'works')
    return 'the dead sensor counts as someone leaving';
  return arrangement.sensor !== 'none' && situation.sensorWorks
    ? 'the sensor sees the person'
    : 'the controller is asked to release it';
}

function cutCause(arrangement: Arrangement, id: ConditionId): string {
  const { situation } = condition(id);
  if (situation.fireAlarm && arrangement.alarmCuts) return 'the fire alarm breaks lock power';
  if (situation.flow && arrangement.flowCuts) return 'the flow switch breaks lock power';
  if (situation.command && arrangement.commandCuts) return 'the remote release breaks lock power';
  if (arrangement.button === 'direct' && !situation.sensorWorks) return 'the button itself breaks lock power';
  if (arrangement.hardwareSwitch === 'direct') return 'the switch in the hardware breaks lock power';
  return 'button and sensor break lock power';
}

function exitClause(arrangement: Arrangement, outcome: Omit<Outcome, 'says'>, rest: Moment): string {
  switch (outcome.exit) {
    case 'after':
      return `pushing sounds an alarm and the door opens after ${outcome.afterS} s`;
    case 'byStaff':
      return arrangement.release === 'lobby'
        ? 'people must call the attended place to be let out'
        : 'people leave only when staff open';
    case 'blocked':
      return blockedClause(arrangement, outcome.condition);
    case 'free':
    case 'none':
      return freeClause(arrangement, outcome, rest);
  }
}

function blockedClause(arrangement: Arrangement, id: ConditionId): string {
  if (arrangement.leafLock.heldByHand) return 'a bolt retracted only by hand keeps people in';
  if (id === 'exitReleasesFailed') {
    return arrangement.alarmCuts
      ? 'sensor and button have both failed, so people wait for the fire alarm or for lock power to be cut'
      : 'sensor and button have both failed, so people wait until lock power is cut';
  }
  if (id === 'interlockFailed') return 'nothing that people do at the door overrules the interlock';
  if (arrangement.release === 'controlled') {
    return 'what staff present goes through the dead controller, so no one can let people out';
  }
  switch (arrangement.release) {
    case 'credentialOut':
      return 'without a credential no one gets out';
    case 'keyInside':
      return 'without a key no one gets out';
    case 'lobby':
      return arrangement.leafLock.outsideLocked === 'no'
        ? 'no one can be called to unlock it'
        : 'the lever is locked toward the lobby, so no one gets out of it';
    case 'sensor':
    case 'buttonOnly':
    case 'doorSwitch':
      return arrangement.failMode === 'secure' && arrangement.button === 'direct'
        ? 'without lock power this lock stays locked, so no one gets out'
        : 'its release only signals the controller, so no one gets out';
    default:
      return 'nothing on the egress side opens it';
  }
}

function freeClause(arrangement: Arrangement, outcome: Omit<Outcome, 'says'>, rest: Moment): string {
  const latch = outcome.latched === 'yes' ? ' and the latch still holds the leaf' : '';
  switch (arrangement.release) {
    case 'free':
    case 'stairReentry':
      if (arrangement.device === 'operatorControl')
        return 'a push swings the leaf out, whatever power and alarm do';
      return arrangement.latch === 'never' && outcome.entry === 'unlocked'
        ? 'the leaf is only pushed or pulled'
        : `inside the lever or bar always opens${outcome.entry === 'unlocked' ? latch : ''}`;
    case 'sensor':
    case 'doorSwitch':
    case 'buttonOnly':
      if (outcome.entry === 'unlocked') return 'both sides open';
      return rest.locked ? releaseAtDoor(arrangement.release, outcome.condition) : `leaving is free${latch}`;
    default:
      return `leaving is free${latch}`;
  }
}

/** What a person leaving works while the lock holds. */
function releaseAtDoor(release: 'sensor' | 'doorSwitch' | 'buttonOnly', id: ConditionId): string {
  switch (release) {
    case 'sensor': {
      const { sensorWorks, relay } = condition(id).situation;
      return sensorWorks && relay === 'works'
        ? 'sensor or button lets people out'
        : 'the button lets people out';
    }
    case 'doorSwitch':
      return 'the switch in lever or bar lets people out';
    case 'buttonOnly':
      return 'the wall button lets people out';
  }
}

const list = (ids: readonly ConditionId[]): string =>
  ids.map((id) => midSentence(condition(id).name)).join('; ');

/** What a finding says; the condition names stand beside it on every sheet. */
export const findingWords = {
  blockedExit: (ids: readonly ConditionId[]) => `A person on the egress side cannot leave: ${list(ids)}.`,
  blockedOtherWay: (ids: readonly ConditionId[]) =>
    `People leave from the locked side too, and from there it is locked: ${list(ids)}.`,
  keyedWhileOccupied:
    'While it is locked no one gets out without the key; it depends on someone unlocking it whenever people are inside.',
  ratedNotLatched: (ids: readonly ConditionId[]) => `A fire-rated leaf is not latched: ${list(ids)}.`,
  ratedNeverRelatched:
    'A fire-rated leaf is unlatched during its unlocked hours, and nothing in the building would latch it in a fire.',
  ratedStaysOpen: 'Nothing closes this fire-rated leaf, so no latch can hold it in a fire.',
  stairAlarm:
    'The stair side stays locked under fire alarm, and people in the stair cannot re-enter the floor.',
  stairNeverFreed:
    'The stair side stays locked, the building has no alarm that could free it, and people in the stair cannot re-enter a floor.',
  stairCommand: 'The stair side cannot be unlocked remotely on command.',
  restsOnTwo: (alarmCuts: boolean) =>
    `People are let out by sensor or button: with both failed ${
      alarmCuts
        ? 'only fire alarm or loss of lock power frees the door'
        : 'nothing but loss of lock power frees the door'
    }. Test each by itself at every inspection.`,
  interlockHolds:
    'The interlock can keep this leaf shut against people leaving, and a failed interlock does: people between the doors are shut in.',
  softwareOnly:
    'Leaving depends on the controller alone: with its relay stuck locked nothing on the egress side releases the door.',
  batteryHolds: (hours: number | null) =>
    `Batteries of the fire alarm panel keep this lock held against people leaving ${
      hours === null ? 'for hours not stated' : `for ${hoursInWords(hours)}`
    }; NFPA 72 lets them do so for ten minutes at most (read in its 2007 text).`,
  secureUnlocks: (hours: number | null, atOnce: boolean) =>
    `This secure opening unlocks from outside when line power fails${
      atOnce
        ? ', at once where it has no battery'
        : hours === null
          ? ' and the battery runs down; how many hours that takes is not stated'
          : `, after ${hoursInWords(hours)} of battery`
    }.`,
  secureUnlocksForStair:
    'The stair side unlocks when power is gone, as the stair requires, though the opening is to be secure.',
  secureUnlocksOnAlarm:
    'This secure opening unlocks from outside under fire alarm; someone has to watch it then.',
  operatorDrivesLatch: 'The operator drives against a latch that nothing retracts for it.',
  functionUnknown: 'What the outside lever does was not surveyed; this table counts it as locked.',
} as const;

export function hoursInWords(hours: number): string {
  const rounded = Math.round(hours * 10) / 10;
  return hours < 1 ? `${Math.round(hours * 60)} min` : `${rounded} h`;
}
