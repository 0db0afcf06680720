import type { CodeBasis } from '../codes/basis.ts';
import type { Candidate } from '../devices/candidates.ts';
import type { ItemId } from '../devices/items.ts';
import { type Slots, slotOf } from '../logic/slots.ts';
import type { Readable } from '../logic/condition.ts';
import type { FactKey, FactValues } from '../model/fields.ts';
import { bareLatches, handBolts } from '../model/latches.ts';
import type { SecurityLevel } from '../model/project.ts';
import type { Arrangement, Known, Setting, Simulable } from './arrangement.ts';
import { type LeafLock, leafLockOf } from './leafLocks.ts';

/** What the decision itself does not know and the project may. */
export interface Surroundings {
  /** Level of the space on the egress side. */
  readonly toLevel?: SecurityLevel | null | undefined;
  /** Hours the standby battery of the lock supply carries this lock; null or absent: nobody stated them. */
  readonly batteryHours?: number | null | undefined;
}

const bare: readonly string[] = bareLatches;
const latchingItems = ['passiveLatch', 'latchingHardware', 'panicHardware', 'fireExitHardware'] as const;

/**
 * All that an arrangement is made of, beside the candidate. Named, so that two openings equal in these need be run
 * once only, and typed, so that nothing else can be read below.
 */
export const arrangedFacts = [
  'latch',
  'lockFunction',
  'readerSides',
  'fireAlarm',
  'detectionThroughout',
  'sprinklered',
  'lockPowerSource',
  'wishScheduledUnlock',
  'operator',
  'egressRole',
  'closing',
  'singleExitStair',
  'stairStories',
  'selectedReentry',
  'fireRated',
  'peopleOnLockedSide',
  'wishInterlock',
  'interlockHoldsEgress',
] as const satisfies readonly Readable[];
/** Read for how long, how well guarded: no severe finding hangs on these. */
const milderFacts = ['standbyHours', 'wishDelay30s', 'delay30sApproved', 'securityNeed'] as const;
/** At most 31, one bit each. */
export const arrangedItems = [
  'passiveLatch',
  'latchingHardware',
  'panicHardware',
  'fireExitHardware',
  'storeroomLockset',
  'passageFunction',
  'delayBothSides',
  'lockTakenOff',
  'exitSensor',
  'pushToExit',
  'doorSwitchHardware',
  'fireAlarmRelease',
  'detectionRelease',
  'fireAlarmRelatch',
  'doorDetector',
  'stairAlarmRelease',
  'stairReleaseTogether',
  'remoteRelease',
  'detentionRelease',
  'delayOverride',
  'lockSupply',
  'twoWayCommunication',
  'staffMeans',
  'staffKeySwitch',
  'closer',
  'smokeClosing',
  'signKeyLock',
  'signKeyLockBuilding',
  'signOutdoor',
] as const satisfies readonly ItemId[];
const milderItems = [
  'exitShuntSensor',
  'requestToExit',
  'doorPosition',
  'signDelayed30',
  'signDelayedPull30',
] as const satisfies readonly ItemId[];
type ArrangedFact = (typeof arrangedFacts)[number] | (typeof milderFacts)[number];
type ArrangedItem = (typeof arrangedItems)[number] | (typeof milderItems)[number];

type Known3<K extends ArrangedFact> = K extends FactKey ? FactValues[K] : boolean;

/**
 * The one description of what a candidate makes of an opening, with the parts that come with it: every lock on the
 * leaf, what releases which, and who stands where. Simulation, building and sheets read nothing else.
 */
export function arrangementOf(
  candidate: Candidate,
  items: ReadonlySet<ItemId>,
  slots: Slots,
  basis: CodeBasis,
  around: Surroundings = {},
): Simulable {
  const fact = <K extends ArrangedFact>(key: K) => slots[slotOf(key)] as Known3<K> | undefined;
  const { deviceId, device, release, failMode } = candidate;
  const has = (...wanted: readonly ArrangedItem[]) => wanted.some((item) => items.has(item));
  const latch = fact('latch');
  const noHandle = latch !== undefined && bare.includes(latch);
  const reader = fact('readerSides');
  const { wired } = device;
  const leafLock = leafLockOf(candidate, latch, fact('lockFunction'), has);
  const alarmKnown = either(fact('fireAlarm'), fact('detectionThroughout'));
  const fireAlarm: Known = has('doorDetector') ? 'yes' : alarmKnown;
  const byAlarmAlone = release === 'alarmOnly' && fireAlarm !== 'no';

  const arrangement: Arrangement = {
    device: deviceId,
    failMode,
    release,
    motor: device.motorBolt === true,
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
    latch: latchOf(candidate, leafLock, has(...latchingItems), latch),
    leafLock,
    lockedOutsideBy: lockedOutsideBy(
      candidate,
      leafLock,
      has('passageFunction') || fact('lockFunction') === 'passage',
    ),
    releaseOnBothSides: ['lobby', 'controlled', 'attended'].includes(release) || has('delayBothSides'),
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
    interlock: wired && fact('wishInterlock') === true ? interlockOf(fact('interlockHoldsEgress')) : 'none',
    // A switch at the controlled door takes no orders from the controller; every other lock of this kind has a key.
    staffDirect: release !== 'controlled' || has('remoteRelease', 'staffKeySwitch'),
    staffReached: has('twoWayCommunication', 'staffMeans', 'remoteRelease', 'detentionRelease'),
    fireAlarm,
    sprinklers: asKnown(fact('sprinklered')),
  };
  const operator = fact('operator');
  const need = fact('securityNeed');
  const role = fact('egressRole');
  const setting: Setting = {
    basis,
    rated: fact('fireRated') === true,
    staysOpen: fact('closing') === 'none' && !has('closer', 'smokeClosing'),
    personBehind: role !== 'noOccupiedSpace' && role !== 'vehicleDoor' && role !== 'sealedOff',
    stairEntry: role === 'stairEntry',
    loneStair: fact('singleExitStair') === true,
    stairStories: fact('stairStories'),
    selectedReentry: fact('selectedReentry') === true,
    peopleOnLockedSide: fact('peopleOnLockedSide') === true,
    openWhileOccupied: has('signKeyLock', 'signKeyLockBuilding', 'signOutdoor'),
    secure:
      need === 'high' ||
      need === 'critical' ||
      around.toLevel === 'restricted' ||
      around.toLevel === 'critical',
    operatorDrives: operator === 'lowEnergy' || operator === 'fullPower',
    powerSource: fact('lockPowerSource'),
    lockFunctionKnown: leafLock.outsideLocked !== 'notKnown',
  };
  return { arrangement, setting };
}

function interlockOf(holdsEgress: boolean | undefined): Arrangement['interlock'] {
  return holdsEgress === undefined ? 'notKnown' : holdsEgress ? 'holds' : 'entry';
}

function lockedOutsideBy(
  { device, deviceId, release }: Candidate,
  leafLock: LeafLock,
  trimIsFree: boolean,
): Arrangement['lockedOutsideBy'] {
  // Its bar is delayed and its trim is not: a trim of passage function lets in whatever the bar does.
  if (deviceId === 'delayedExitDevice' && trimIsFree) return 'leafLock';
  if (device.family === 'none') return 'leafLock';
  // A lock keyed from inside, or by staff, is thrown against both sides.
  if (device.family === 'mechanical') return release === 'free' ? 'leafLock' : 'device';
  return leafLock.kind === 'none' ? 'device' : 'both';
}

function latchOf(
  { deviceId, device, failMode }: Candidate,
  leafLock: LeafLock,
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
      return latch !== undefined && noSpring.includes(latch) && !otherLatch ? 'never' : 'always';
    case 'none':
      return 'never';
    case 'magnet':
    case 'bolt':
    case 'operator':
      break;
  }
  return otherLatch || springLatch(leafLock) ? 'always' : 'never';
}
const noSpring: readonly string[] = [...handBolts, 'operatorLock'];

function springLatch({ kind }: LeafLock): boolean {
  return kind === 'lever' || kind === 'bar';
}

/** A listed lock supply brings its battery, and so does the fire alarm panel; any other source was not asked. */
function batteryOf(source: string | undefined, supplyListed: boolean): Known {
  if (source === 'poe' || source === 'other') return 'notKnown';
  return supplyListed ? 'yes' : 'notKnown';
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
