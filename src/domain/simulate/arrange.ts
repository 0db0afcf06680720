import type { Candidate } from '../devices/candidates.ts';
import type { ItemId } from '../devices/items.ts';
import type { Decision } from '../decide/decision.ts';
import { partsOf } from '../decide/parts.ts';
import { slotOf } from '../logic/compile.ts';
import type { FactKey, FactValues } from '../model/fields.ts';
import type { SecurityLevel } from '../model/project.ts';
import type { Arrangement, Known, Setting, Simulable } from './arrangement.ts';

/** What the decision itself does not know and the project may. */
export interface Surroundings {
  /** Level of the space on the egress side. */
  readonly toLevel?: SecurityLevel | null | undefined;
  /** Hours the standby battery of the lock supply carries this lock; null or absent: nobody stated them. */
  readonly batteryHours?: number | null | undefined;
}

/** Latches that hold a leaf by themselves beside a magnet or bolt. */
const positiveLatches: ReadonlySet<string> = new Set([
  'bored',
  'mortise',
  'mortiseDeadbolt',
  'boredPlusDeadbolt',
  'rimExit',
  'verticalRods',
  'rimPlusRods',
  'deadlatch',
  'railExit',
  'gateLock',
]);
const nothingToTurn: ReadonlySet<string> = new Set(['pushPull', 'roller']);
const latchingItems = ['passiveLatch', 'latchingHardware', 'panicHardware', 'fireExitHardware'] as const;

/**
 * The arrangement behind a decision, or undefined where nothing was chosen. What a person put in its place counts
 * even where the engine refuses to decide: it is what would be built.
 */
export function arrange(decision: Decision, around: Surroundings = {}): Simulable | undefined {
  const candidate = decision.chosen?.candidate ?? decision.overridden ?? undefined;
  if (candidate === undefined) return undefined;
  const items = new Set<ItemId>(partsOf(decision).map((part) => part.item));
  return arrangeFrom(candidate, items, factsOf(decision), decision, around);
}

type Facts = Partial<FactValues>;

function factsOf(decision: Decision): <K extends FactKey>(key: K) => FactValues[K] {
  return <K extends FactKey>(key: K) => decision.slots[slotOf(key)] as FactValues[K];
}

function arrangeFrom(
  candidate: Candidate,
  items: ReadonlySet<ItemId>,
  fact: <K extends FactKey>(key: K) => Facts[K],
  decision: Decision,
  around: Surroundings,
): Simulable {
  const { deviceId, device, release, failMode } = candidate;
  const has = (...wanted: readonly ItemId[]) => wanted.some((item) => items.has(item));
  const latch = fact('latch');
  const noHandle = latch !== undefined && nothingToTurn.has(latch);
  const reader = fact('readerSides');
  const { wired } = device;
  // Push and pull only, or a passage set: whatever hangs on the leaf today, nothing locks it from outside.
  const bare = failMode === 'none' && !device.keepsLatch;
  const nothingLocks = bare || noHandle || has('passageFunction');
  const alarmKnown = either(fact('fireAlarm'), fact('detectionThroughout'));
  const fireAlarm: Known = has('doorDetector') ? 'yes' : alarmKnown;
  const byAlarmAlone = release === 'alarmOnly' && fireAlarm !== 'no';

  const arrangement: Arrangement = {
    device: deviceId,
    failMode,
    release,
    motor: deviceId === 'boltMotor',
    sensor: release === 'sensor' || has('exitSensor') ? (has('exitSensor') ? 'failsOpen' : 'plain') : 'none',
    button:
      release === 'sensor' || release === 'buttonOnly'
        ? has('pushToExit')
          ? 'direct'
          : 'asksController'
        : 'none',
    hardwareSwitch:
      release === 'doorSwitch' ? (has('doorSwitchHardware') ? 'direct' : 'asksController') : 'none',
    alarmCuts:
      byAlarmAlone ||
      has('fireAlarmRelease', 'detectionRelease', 'fireAlarmRelatch', 'doorDetector', 'stairAlarmRelease'),
    flowCuts:
      byAlarmAlone || has('fireAlarmRelease', 'detectionRelease', 'fireAlarmRelatch', 'stairAlarmRelease'),
    commandCuts: has('stairReleaseTogether', 'remoteRelease', 'detentionRelease', 'delayOverride'),
    latch: latchOf(candidate, has(...latchingItems), latch),
    freeHardware: !(device.family === 'strike' && noHandle) || has('storeroomLockset', ...latchingItems),
    battery: wired ? batteryOf(fact('lockPowerSource'), has('lockSupply')) : 'no',
    batteryHours: around.batteryHours ?? hoursIn(fact('standbyHours')),
    reader: reader !== 'none',
    scheduled: fact('wishScheduledUnlock') === true,
    reportsPosition: has('doorPosition') || device.family === 'battery',
    exitSignal:
      has('requestToExit', 'exitShuntSensor', 'exitSensor', 'pushToExit', 'doorSwitchHardware') ||
      device.family === 'battery',
    delayS:
      has('signDelayed30', 'signDelayedPull30') ||
      (fact('wishDelay30s') === true && fact('delay30sApproved') === true)
        ? 30
        : 15,
    staffReached: has('twoWayCommunication', 'staffMeans', 'remoteRelease', 'detentionRelease'),
    outside: outsideOf(fact('lockFunction'), nothingLocks),
    fireAlarm,
    sprinklers: asKnown(fact('sprinklered')),
  };
  const operator = fact('operator');
  const need = fact('securityNeed');
  const role = fact('egressRole');
  const setting: Setting = {
    basis: decision.basis,
    rated: decision.slots[slotOf('fireRated')] === true,
    staysOpen: fact('closing') === 'none' && !has('closer', 'smokeClosing'),
    personBehind: role !== 'noOccupiedSpace' && role !== 'sealedOff',
    stairSideLocked: decision.slots[slotOf('stairSideToLock')] === true,
    loneStair: fact('singleExitStair') === true,
    stairStories: fact('stairStories'),
    selectedReentry: fact('selectedReentry') === true,
    bothWays: fact('exitDirection') === 'both',
    openWhileOccupied: has('signKeyLock', 'signKeyLockBuilding', 'signOutdoor'),
    secure:
      need === 'high' ||
      need === 'critical' ||
      around.toLevel === 'restricted' ||
      around.toLevel === 'critical',
    operatorDrives: operator === 'lowEnergy' || operator === 'fullPower',
    powerSource: fact('lockPowerSource'),
    lockFunctionKnown: fact('lockFunction') !== undefined || nothingLocks,
  };
  return { arrangement, setting };
}

function latchOf(
  { deviceId, device, failMode }: Candidate,
  otherLatch: boolean,
  latch: string | undefined,
): Arrangement['latch'] {
  // Nothing electric and no latch of its own: push and pull.
  if (failMode === 'none' && !device.keepsLatch) return otherLatch ? 'always' : 'never';
  switch (device.family) {
    case 'strike':
      return 'whileLocked';
    case 'exitDevice':
      // Trim locks the outside lever only; retraction and the rail device give the latch up while released.
      return deviceId === 'exitTrim' ? 'always' : 'whileLocked';
    case 'lock':
    case 'battery':
    case 'detention':
      return 'always';
    case 'delayed':
      if (device.keepsLatch) return 'always';
      break;
    case 'mechanical':
      return failMode === 'none' && latch !== undefined && !positiveLatches.has(latch) && !otherLatch
        ? 'never'
        : 'always';
    case 'none':
      return 'never';
    case 'magnet':
    case 'bolt':
      break;
  }
  return otherLatch || (latch !== undefined && positiveLatches.has(latch)) ? 'always' : 'never';
}

/** A listed lock supply brings its battery, and so does the fire alarm panel; any other source was not asked. */
function batteryOf(source: string | undefined, supplyListed: boolean): Known {
  if (source === 'poe' || source === 'other') return 'notKnown';
  return supplyListed ? 'yes' : 'notKnown';
}

/** Whether the outside of a lock without electricity is locked while nobody used its key or button. */
function outsideOf(lockFunction: string | undefined, nothingLocks: boolean): Known {
  if (nothingLocks || lockFunction === 'passage') return 'no';
  return lockFunction === undefined ? 'notKnown' : 'yes';
}

function asKnown(value: boolean | undefined): Known {
  return value === undefined ? 'notKnown' : value ? 'yes' : 'no';
}
function either(a: boolean | undefined, b: boolean | undefined): Known {
  if (a === true || b === true) return 'yes';
  return a === false && b === false ? 'no' : 'notKnown';
}

function hoursIn(value: unknown): number | null {
  return typeof value === 'number' ? value : null;
}
