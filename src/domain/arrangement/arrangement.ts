import type { CodeBasis } from '../codes/basis.ts';
import type { DeviceId, FailMode } from '../devices/devices.ts';
import type { Release } from '../devices/candidates.ts';
import type { LeafLock } from './leafLocks.ts';

export type Known = 'yes' | 'no' | 'notKnown';

/** How an opening is wired and built, in what the circuit needs. Two openings with equal parts behave alike. */
export interface Arrangement {
  readonly device: DeviceId;
  readonly failMode: FailMode;
  readonly release: Release;
  /** Current flows only while the bolt moves. */
  readonly motor: boolean;
  /** A sensor that unlocks when its own power or signal is lost, one that does not, or none. */
  readonly sensor: 'failsOpen' | 'plain' | 'none';
  /** The button or the switch in the hardware breaks lock power itself, or only asks the controller. */
  readonly button: 'direct' | 'asksController' | 'none';
  readonly hardwareSwitch: 'direct' | 'asksController' | 'none';
  /** Contacts of the fire alarm, of flow and detection, of a remote release in the lock circuit. */
  readonly alarmCuts: boolean;
  readonly flowCuts: boolean;
  readonly commandCuts: boolean;
  /** A latch holds the closed leaf: in every state, only while the lock is not released, or never. */
  readonly latch: 'always' | 'whileLocked' | 'never';
  /** The lock of the leaf itself, beside the device or in place of one. */
  readonly leafLock: LeafLock;
  /** What keeps the outside shut: the device alone, the lock of the leaf alone, or either of the two. */
  readonly lockedOutsideBy: 'device' | 'leafLock' | 'both';
  /** Whoever stands on the locked side is let go in the same way as whoever stands on the other. */
  readonly releaseOnBothSides: boolean;
  /** A lever, bar or pull on the egress side opens the leaf by hand. */
  readonly freeHardware: boolean;
  readonly battery: Known;
  /** Hours the standby battery carries the lock; null when nobody stated them. */
  readonly batteryHours: number | null;
  readonly reader: boolean;
  readonly scheduled: boolean;
  readonly reportsPosition: boolean;
  readonly exitSignal: boolean;
  readonly delayS: number;
  /**
   * One of several doors that wait for each other. `entry`: it holds entry alone; `holds`: it can keep the leaf shut
   * against a person leaving; `notKnown`: nobody said which.
   */
  readonly interlock: 'none' | 'entry' | 'holds' | 'notKnown';
  /** Staff open by a key or by a switch that breaks lock power, whatever the controller does. */
  readonly staffDirect: boolean;
  /** People held can call an attended place that is able to unlock. */
  readonly staffReached: boolean;
  readonly fireAlarm: Known;
  readonly sprinklers: Known;
}

/** What the findings need besides the behavior itself. */
export interface Setting {
  readonly basis: CodeBasis;
  readonly rated: boolean;
  /** Nothing closes the leaf, and no part will. */
  readonly staysOpen: boolean;
  /** Somebody can stand on the egress side; also while nobody said what part the door plays. */
  readonly personBehind: boolean;
  /** A door into an exit stair: whoever is in the stair stands on its locked side. */
  readonly stairEntry: boolean;
  /** The stair is the only exit of its building: its own exception, left to a reviewer. */
  readonly loneStair: boolean;
  readonly stairStories: number | undefined;
  readonly selectedReentry: boolean;
  /** People must get away through it from the locked side as well. */
  readonly peopleOnLockedSide: boolean;
  /** A lock keyed from inside that a sign orders to stand open while people are in. */
  readonly openWhileOccupied: boolean;
  readonly secure: boolean;
  readonly operatorDrives: boolean;
  readonly powerSource: string | undefined;
  readonly lockFunctionKnown: boolean;
}

export interface Simulable {
  readonly arrangement: Arrangement;
  readonly setting: Setting;
}
