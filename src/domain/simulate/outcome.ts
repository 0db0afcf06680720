import type { ConditionId } from './conditions.ts';

export type Entry = 'locked' | 'unlocked' | 'none';
/** `after`: free once the delay has run. `none`: the condition does not apply here. */
export type Exit = 'free' | 'after' | 'byStaff' | 'blocked' | 'none';
export type YesNo = 'yes' | 'no' | 'none';

/** How the door stands, all of it at one time. */
export interface DoorState {
  readonly entry: Entry;
  readonly exit: Exit;
  /** Seconds of the delay where the exit opens after one. */
  readonly afterS: number | null;
  readonly latched: YesNo;
  readonly coil: YesNo;
}

/** What happens at one opening in one condition. */
export interface Outcome extends DoorState {
  readonly condition: ConditionId;
  /** False where the opening has nothing this condition speaks of; then everything reads `none`. */
  readonly applies: boolean;
  /**
   * Where a fire finds the door otherwise in its unlocked hours. `exit` and `latched` of the outcome are then the worse
   * of both, which is what findings ask; what a person reads or tests is one of the two.
   */
  readonly hours: { readonly locked: DoorState; readonly unlocked: DoorState } | null;
  /** This opening raises an alarm: forced, held, or its delay running. */
  readonly alarm: boolean;
  /** Why, in one sentence. */
  readonly says: string;
}
export type Outcomes = Readonly<Record<ConditionId, Outcome>>;

export type Severity = 'severe' | 'serious' | 'note';
export const severityWords: Readonly<Record<Severity, string>> = {
  severe: 'Severe',
  serious: 'Serious',
  note: 'Note',
};

export type FindingKind =
  | 'blockedExit'
  | 'restsOnTwo'
  | 'interlockHolds'
  | 'blockedOtherWay'
  | 'ratedNotLatched'
  | 'ratedStaysOpen'
  | 'stairSideLocked'
  | 'softwareOnly'
  | 'batteryHolds'
  | 'secureUnlocks'
  | 'operatorDrivesLatch'
  | 'functionUnknown';

export interface OpeningFinding {
  readonly kind: FindingKind;
  readonly severity: Severity;
  /** Conditions in which it shows; empty when it is about the arrangement as such. */
  readonly conditions: readonly ConditionId[];
  readonly says: string;
}

const order: Readonly<Record<Severity, number>> = { severe: 0, serious: 1, note: 2 };
export function bySeverity(a: { readonly severity: Severity }, b: { readonly severity: Severity }): number {
  return order[a.severity] - order[b.severity];
}
