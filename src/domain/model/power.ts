import { z } from 'zod';
import { idSchema, longestName } from './ids.ts';

/**
 * What feeds the openings: closets, supplies, the user's own product book, and per opening where its cable goes. Each is
 * keyed by id, and what a person types about one opening carries its own stamp, so two copies can be merged.
 */
const stamp = { at: z.iso.datetime().optional(), by: z.string().optional() };
const aName = (whenEmpty: string) =>
  z.string().min(1, whenEmpty).max(longestName, `A name has at most ${longestName} characters.`);
const aLine = z.string().max(longestName, `This has at most ${longestName} characters.`);
/** A figure above zero; the sentences stand beside the field. */
const above0 = (what: string, unit: string, most: number) =>
  z
    .number(`${what} must be a number.`)
    .positive(`${what} must be above 0 ${unit}; leave it empty where it is not known.`)
    .max(most, `${what} cannot be above ${most} ${unit}; check the unit.`);

export const closetSchema = z.looseObject({
  id: idSchema,
  name: aName('A closet needs a name.'),
  floorId: idSchema.nullable(),
  /** The space it stands in, for distances on the plan. */
  spaceId: idSchema.nullable(),
  /** A branch circuit for supplies is there; null: nobody looked. */
  linePower: z.boolean().nullable(),
  /** Lowest temperature the batteries see; null: the usual 20 °C. */
  temperatureC: z
    .number('The temperature must be a number.')
    .min(-40, 'The temperature cannot be below −40 °C.')
    .max(60, 'The temperature cannot be above 60 °C; check the unit.')
    .nullable(),
  /** What hangs there already. */
  notes: z.string(),
});
export type Closet = Readonly<z.infer<typeof closetSchema>>;

export const supplyFeeds = ['linePower', 'fireAlarmPanel'] as const;
export const currentKinds = ['dc', 'ac'] as const;
export const supplySchema = z.looseObject({
  id: idSchema,
  name: aName('A supply needs a name.'),
  closetId: idSchema.nullable(),
  volts: above0('The voltage', 'V', 60),
  current: z.enum(currentKinds),
  amps: above0('The rating', 'A', 200),
  /** The maker’s rating for a short peak, where there is one. */
  peakAmps: above0('The peak rating', 'A', 400).nullable(),
  outputs: z
    .number('The number of outputs must be a number.')
    .int('The number of outputs must be a whole number.')
    .min(1, 'A supply has at least 1 output.')
    .max(64, 'A supply has at most 64 outputs here; enter two.'),
  class2: z.boolean(),
  /** Of the whole set at the supply’s own voltage; 0: none is there, null: nobody looked. */
  batteryAh: z
    .number('The battery must be a number.')
    .min(0, 'The battery cannot be below 0 Ah.')
    .max(2000, 'The battery cannot be above 2000 Ah; check the unit.')
    .nullable(),
  /** Whether its outputs keep their volts while the battery falls. */
  holdsVolts: z.boolean(),
  fedBy: z.enum(supplyFeeds),
});
export type Supply = Readonly<z.infer<typeof supplySchema>>;

export const productSchema = z.looseObject({
  id: idSchema,
  /** A load class of the power room. */
  of: z.string().min(1, 'Choose what the product is.'),
  maker: aLine,
  part: aName('A product needs a part number or a name.'),
  volts: above0('The voltage', 'V', 60),
  current: z.enum(currentKinds),
  steadyA: above0('The current', 'A', 50),
  peakA: above0('The peak', 'A', 100).nullable(),
  /** The least volts the listing lets it work at; null: 10 % below its rating. */
  leastVolts: above0('The least voltage', 'V', 60).nullable(),
  suppressor: z.enum(['builtIn', 'none']).nullable(),
  listing: aLine,
  price: z
    .number('The price must be a number.')
    .min(0, 'The price cannot be below 0.')
    .max(1_000_000, 'The price cannot be above 1,000,000.')
    .nullable(),
  ...stamp,
});
export type Product = Readonly<z.infer<typeof productSchema>>;

const lengthFt = z
  .number('The run must be a number.')
  .min(0, 'The run cannot be below 0 ft.')
  .max(5000, 'The run cannot be above 5000 ft; check the unit.');

/** Where the cable of one opening goes; each answer with its own stamp. */
export const runSchema = z.looseObject({
  id: idSchema,
  lengthFt: z.looseObject({ value: lengthFt, ...stamp }).nullable(),
  closetId: z.looseObject({ value: idSchema, ...stamp }).nullable(),
  supplyId: z.looseObject({ value: idSchema, ...stamp }).nullable(),
});
export type Run = Readonly<z.infer<typeof runSchema>>;
export const runFields = ['lengthFt', 'closetId', 'supplyId'] as const;
export type RunField = (typeof runFields)[number];

export const noRun = (id: string): Run => ({ id, lengthFt: null, closetId: null, supplyId: null });
