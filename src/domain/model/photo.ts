import { z } from 'zod';
import { idSchema } from './ids.ts';

/**
 * What is known of a photo. The picture itself is no part of the project document: it is kept by its SHA-256, so the
 * same picture is kept once, and a picture that is damaged or missing never costs more than itself.
 */
export const sha256Schema = z
  .string()
  .regex(/^[0-9a-f]{64}$/, 'It should be a SHA-256 in 64 hexadecimal digits.');

/** A place on a picture, as a share of its width or height: it holds at any size on screen or paper. */
export const shareSchema = z.number().min(0).max(1);

/** From its tail to what it points at. Kept beside the picture and drawn over it, never into it. */
export const arrowSchema = z.looseObject({
  id: idSchema,
  fromX: shareSchema,
  fromY: shareSchema,
  toX: shareSchema,
  toY: shareSchema,
});
export type Arrow = Readonly<z.infer<typeof arrowSchema>>;

export const longestCaption = 300;
const pixels = z.number().int().min(1).max(20_000);

export const photoSchema = z.looseObject({
  id: idSchema,
  openingId: idSchema,
  /** A place round the door (a station of the survey) or the fact it shows. */
  about: z.string().max(64),
  caption: z.string().max(longestCaption, `A caption has at most ${longestCaption} characters.`),
  arrows: z.record(idSchema, arrowSchema),
  sha256: sha256Schema,
  widthPx: pixels,
  heightPx: pixels,
  bytes: z.number().int().min(1),
  at: z.iso.datetime(),
  by: z.string(),
});
export type Photo = Readonly<z.infer<typeof photoSchema>>;
