import type { FactKey } from '../model/fields.ts';

/**
 * Where the plan of the building says otherwise than the survey of an opening. They are worked out from spaces and
 * openings, never surveyed and never unknown: what the plan does not show is not so.
 */
export const planKeys = [
  'planOnlyDoor',
  'planLoadLarger',
  'planGroupStricter',
  'planHighHazardLeaves',
  'planAreaDiffers',
  'planNoOtherDoor',
  'planNoLobbyExit',
  'planSpaceLoads',
] as const;
export type PlanKey = (typeof planKeys)[number];

/** The surveyed fact each of them speaks of. */
export const factOfPlanKey: Readonly<Record<PlanKey, FactKey>> = {
  planOnlyDoor: 'mainDoor',
  planLoadLarger: 'occupantLoad',
  planGroupStricter: 'occupancyGroup',
  planHighHazardLeaves: 'occupancyGroup',
  planAreaDiffers: 'roomAreaFt2',
  planNoOtherDoor: 'egressRole',
  planNoLobbyExit: 'lobbyHasOtherExit',
  planSpaceLoads: 'occupantLoad',
};
export type PlanSays = { readonly [K in PlanKey]?: true };

const names: ReadonlySet<string> = new Set(planKeys);
export function isPlanKey(key: string): key is PlanKey {
  return names.has(key);
}
