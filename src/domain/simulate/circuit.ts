import type { Arrangement } from '../arrangement/arrangement.ts';
import type { Situation } from './conditions.ts';
import type { Exit } from './outcome.ts';

/** The lock circuit at one moment. */
export interface Moment {
  readonly locked: boolean;
  readonly energized: boolean;
  /** Power reaches the output of the lock supply. */
  readonly fed: boolean;
  /** A contact in series has opened: button, hardware switch, fire alarm, detection or remote release. */
  readonly cut: boolean;
  /** The controller asks for the released state. */
  readonly released: boolean;
}

/**
 * The circuit is: supply, then every contact that breaks power directly, then the controller's relay, then the
 * coil. A fail-safe lock holds while current flows and its relay opens to release; a fail-secure one releases
 * while current flows and its relay closes to release. Whoever stands in front of the door acts only if `person`.
 */
export function circuitAt(arrangement: Arrangement, at: Situation, person: boolean): Moment {
  const { failMode } = arrangement;
  if (failMode === 'asIs' || failMode === 'none') return withoutSupply(arrangement, at);
  const fed = at.supply && (at.mains || (arrangement.battery !== 'no' && at.charged));
  const byHand = person && at.exitReleases === 'work' && !isOverruled(arrangement, at);
  const cut =
    (at.fireAlarm && arrangement.alarmCuts) ||
    (at.flow && arrangement.flowCuts) ||
    (at.command && arrangement.commandCuts) ||
    (byHand && arrangement.button === 'direct') ||
    (byHand && arrangement.hardwareSwitch === 'direct');
  const released = relayReleases(arrangement, at, person);
  if (failMode === 'safe') {
    const locked = fed && !cut && !released;
    return { locked, energized: locked && !arrangement.motor, fed, cut, released };
  }
  const locked = !(fed && !cut && released);
  return { locked, energized: !locked && !arrangement.motor, fed, cut, released };
}

/** An interlock that can hold the leaf against people leaving overrules what they do at the door. */
function isOverruled({ interlock }: Arrangement, at: Situation): boolean {
  return at.interlock === 'held' && (interlock === 'holds' || interlock === 'notKnown');
}

function relayReleases(arrangement: Arrangement, at: Situation, person: boolean): boolean {
  if (at.relay === 'stuckReleased') return true;
  if (at.interlock === 'held' && arrangement.interlock !== 'none') return false;
  const sensorSpeaks =
    arrangement.sensor !== 'none' &&
    at.exitReleases === 'work' &&
    (at.sensorWorks ? person : arrangement.sensor === 'failsOpen');
  if (at.relay === 'stuckLocked') return false;
  return (
    (at.unlockedHours && arrangement.scheduled) ||
    (at.credential && arrangement.reader) ||
    sensorSpeaks ||
    (person &&
      at.exitReleases === 'work' &&
      (arrangement.button === 'asksController' || arrangement.hardwareSwitch === 'asksController'))
  );
}

/** A battery lockset and a mechanical lock know no supply, no contact and no relay. */
function withoutSupply(arrangement: Arrangement, at: Situation): Moment {
  const released =
    arrangement.failMode === 'asIs'
      ? at.cells && ((at.unlockedHours && arrangement.scheduled) || (at.credential && arrangement.reader))
      : arrangement.release === 'keyInside'
        ? at.unlockedHours
        : arrangement.lockedOutsideBy === 'leafLock' && arrangement.leafLock.outsideLocked === 'no';
  return { locked: !released, energized: false, fed: false, cut: false, released };
}

/** Whether somebody outside is kept out: the device may have let go while the lock of the leaf still holds. */
export function outsideLocked({ lockedOutsideBy, leafLock }: Arrangement, { locked }: Moment): boolean {
  if (lockedOutsideBy === 'device') return locked;
  return leafLock.outsideLocked !== 'no' || (lockedOutsideBy === 'both' && locked);
}

/** What a person leaving meets: `rest` is the lock before they act, `acting` while they do what the door asks. */
export function exitAt(arrangement: Arrangement, at: Situation, rest: Moment, acting: Moment): Exit {
  const { leafLock, release } = arrangement;
  if (leafLock.heldByHand) return 'blocked';
  // Whoever waits in an elevator lobby stands on the locked side of the leaf, and its lever must open there too.
  if (release === 'lobby' && leafLock.outsideLocked !== 'no') return 'blocked';
  if (!rest.locked) return 'free';
  switch (release) {
    case 'free':
    case 'stairReentry':
      return arrangement.freeHardware ? 'free' : 'blocked';
    case 'sensor':
    case 'doorSwitch':
    case 'buttonOnly':
      return acting.locked ? 'blocked' : 'free';
    case 'delayed':
      return 'after';
    case 'controlled':
      // What staff present at the door goes through the controller too, unless it breaks lock power itself.
      return at.relay === 'stuckLocked' && !arrangement.staffDirect ? 'blocked' : 'byStaff';
    case 'clinical':
    case 'attended':
      return 'byStaff';
    case 'lobby':
      return arrangement.staffReached ? 'byStaff' : 'blocked';
    case 'keyInside':
    case 'credentialOut':
    case 'alarmOnly':
    case 'none':
      return 'blocked';
  }
}
