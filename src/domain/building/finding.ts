import type { ConditionId } from '../simulate/conditions.ts';
import type { Severity } from '../simulate/outcome.ts';

export type BuildingFindingKind =
  | 'trapped'
  | 'keyed'
  | 'noReentry'
  | 'staffOnly'
  | 'dispersal'
  | 'restsOnTwo'
  | 'publicWayAsked'
  | 'notSaid'
  | 'exposed'
  | 'tooNarrow'
  | 'exitLost'
  | 'oneExit'
  | 'noOutside'
  | 'noPublic'
  | 'noDoors'
  | 'oneSided'
  | 'sameSpace'
  | 'undecided'
  | 'noLevel'
  | 'noWidth'
  | 'alongTheWay'
  | 'exitsShort'
  | 'exitsOpen'
  | 'capacityShort'
  | 'capacityOpen'
  | 'doorNarrow'
  | 'panicMissing'
  | 'panicOpen'
  | 'planDiffers'
  | 'loadDiffers';

/** One thing wrong with the building, with the way it happens and the openings to act on. */
export interface BuildingFinding {
  readonly kind: BuildingFindingKind;
  readonly severity: Severity;
  readonly conditions: readonly ConditionId[];
  readonly spaceId: string | null;
  /** What stands in the way, what is narrow, what stands open, or what the survey left out. */
  readonly openingIds: readonly string[];
  /** The way spoken of, opening by opening. */
  readonly path: readonly string[];
  /** Openings whose locking closes an exposure; null where a lock would stand in a way out. */
  readonly closing: readonly string[] | null;
  readonly says: string;
  /** The rule behind it, where it is one that looks along the way out. */
  readonly ruleId?: string;
}
