import { limits } from '../codes/limits.ts';
import type { FactValue } from '../model/fields.ts';

/** Lowest and highest force, lbf; equal when the figure is one number. */
export type Band = readonly [lowest: number, highest: number];

/**
 * Default strength of what stands between the locking device and the building, lbf static.
 * Common practice, no source: a project types its own figures. A wide band means the survey does not ask what
 * would settle it (screws in a wood jamb, steel of a gate).
 */
export const frameLbf: Readonly<Record<FactValue<'frameMaterial'>, Band>> = {
  // 16 gauge, the usual commercial frame; 18 gauge is taken as 1000, 14 gauge as 2000.
  hollowMetal: [1500, 1500],
  // 3/4 in screws into the jamb only, up to 3 in screws into the stud.
  wood: [300, 800],
  aluminium: [600, 600],
  // A patch fitting on glass is what such an opening is held by.
  none: [300, 300],
  posts: [600, 2000],
  track: [300, 1500],
};
export const groutAddsLbf = 500;

export const doorEdgeLbf: Readonly<Record<FactValue<'leafMaterial'>, Band>> = {
  hollowMetal: [1500, 1500],
  woodMineralCore: [600, 600],
  woodSolidCore: [600, 600],
  woodHollowCore: [150, 150],
  aluminiumNarrow: [600, 600],
  // No better figure is in use for the larger stiles, so they are not taken as stronger.
  aluminiumMedium: [600, 600],
  aluminiumWide: [600, 600],
  glassFrameless: [300, 300],
  glazedFireAssembly: [600, 1500],
  gateFramed: [600, 1500],
  chainLink: [150, 600],
  rollingSteel: [600, 1500],
};

export interface LatchFigure {
  readonly lbf: Band;
  /** How far such a latch reaches out of the leaf when it is new, in. */
  readonly ratedProjectionIn: number;
}

/** Latches that stay in the leaf and go on holding it. A bored latch is taken as Grade 2 until its grade is known. */
export const latchFigures: Readonly<Partial<Record<FactValue<'latch'>, LatchFigure>>> = {
  bored: { lbf: [500, 500], ratedProjectionIn: 0.5 },
  boredPlusDeadbolt: { lbf: [500, 500], ratedProjectionIn: 0.5 },
  mortise: { lbf: [1250, 1250], ratedProjectionIn: 0.75 },
  mortiseDeadbolt: { lbf: [1250, 1250], ratedProjectionIn: 0.75 },
  deadlatch: { lbf: [600, 600], ratedProjectionIn: 0.5 },
  rimExit: { lbf: [700, 700], ratedProjectionIn: 0.75 },
  verticalRods: { lbf: [700, 700], ratedProjectionIn: 0.5 },
  rimPlusRods: { lbf: [700, 700], ratedProjectionIn: 0.75 },
  railExit: { lbf: [600, 600], ratedProjectionIn: 0.5 },
  // Nothing here for a strike to hold.
  pushPull: { lbf: [0, 0], ratedProjectionIn: 0.5 },
  roller: { lbf: [0, 0], ratedProjectionIn: 0.5 },
};

/** Less than this in the keeper will not hold, whatever the latch is graded. */
export const leastEngagementIn = limits.leastEngagementIn.editions.any.value;
