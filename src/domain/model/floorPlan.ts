import { z } from 'zod';
import { idSchema, longestName } from './ids.ts';
import { sha256Schema, shareSchema } from './photo.ts';

/** A drawing of a floor with openings and closets pinned on it. The picture is kept by its hash, as photos are. */

const pixels = z.number().int().min(1).max(20_000);

/** Two points of the drawing that are a known length apart. */
export const scaleSchema = z.looseObject({
  fromX: shareSchema,
  fromY: shareSchema,
  toX: shareSchema,
  toY: shareSchema,
  lengthFt: z
    .number('The length must be a number.')
    .positive('The length must be above 0 ft.')
    .max(5000, 'The length cannot be above 5000 ft; check the unit.'),
});

export const floorPlanSchema = z.looseObject({
  id: idSchema,
  floorId: idSchema,
  name: z.string().max(longestName),
  sha256: sha256Schema,
  widthPx: pixels,
  heightPx: pixels,
  bytes: z.number().int().min(1),
  /** Null: nobody has said how long anything on it is, so nothing is measured. */
  scale: scaleSchema.nullable(),
  at: z.iso.datetime(),
  by: z.string(),
});
export type FloorPlan = Readonly<z.infer<typeof floorPlanSchema>>;

/** Where an opening, a closet or a space stands on a plan; under the id of what it pins, so nothing stands at two places. */
export const pinSchema = z.looseObject({
  id: idSchema,
  planId: idSchema,
  x: shareSchema,
  y: shareSchema,
  at: z.iso.datetime().optional(),
  by: z.string().optional(),
});
export type Pin = Readonly<z.infer<typeof pinSchema>>;

export interface Spot {
  readonly x: number;
  readonly y: number;
}
type Sized = Pick<FloorPlan, 'widthPx' | 'heightPx'>;

/** Apart in pixels of the picture; shares alone would measure a wide plan wrong. */
export function pixelsBetween({ widthPx, heightPx }: Sized, a: Spot, b: Spot): number {
  return Math.hypot((b.x - a.x) * widthPx, (b.y - a.y) * heightPx);
}

/** Feet between two spots as the crow flies; undefined where the plan has no scale. */
export function feetBetween(plan: Sized & Pick<FloorPlan, 'scale'>, a: Spot, b: Spot): number | undefined {
  const { scale } = plan;
  if (scale === null) return undefined;
  const known = pixelsBetween(plan, { x: scale.fromX, y: scale.fromY }, { x: scale.toX, y: scale.toY });
  // Two points on one spot measure nothing.
  return known < 1 ? undefined : (pixelsBetween(plan, a, b) / known) * scale.lengthFt;
}

/** Points closer than this share of the plan would make every length a guess. */
export const shortestScale = 0.02;
export function isFarEnough(a: Spot, b: Spot): boolean {
  return Math.hypot(b.x - a.x, b.y - a.y) >= shortestScale;
}
