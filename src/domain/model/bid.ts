import { z } from 'zod';
import { idSchema, longestName } from './ids.ts';

/**
 * What a bid adds to the openings: prices and who does what, item by item, and the terms of the paper. All of it is the
 * project's own; nothing is shipped. Keyed by item and stamped, so two copies can be merged.
 */
const stamp = { at: z.iso.datetime().optional(), by: z.string().optional() };
const aLine = z.string().max(longestName, `This has at most ${longestName} characters.`);

/** Of an item, or of one part number of it; the narrower one counts where both are there. */
export const priceSchema = z.looseObject({
  id: idSchema,
  /** In the currency of the bid, for one unit of the item. */
  amount: z
    .number('The price must be a number.')
    .min(0, 'The price cannot be below 0.')
    .max(1_000_000, 'The price cannot be above 1,000,000.'),
  ...stamp,
});
export type Price = Readonly<z.infer<typeof priceSchema>>;

export const itemEntryFields = ['finish', 'keySet', 'suppliedBy', 'installedBy', 'wiredBy'] as const;
export type ItemEntryField = (typeof itemEntryFields)[number];
/** What is said once of an item and then stands in each of its lines; empty where nobody said it. */
export const itemEntrySchema = z.looseObject({
  id: idSchema,
  finish: aLine,
  keySet: aLine,
  suppliedBy: aLine,
  installedBy: aLine,
  wiredBy: aLine,
  ...stamp,
});
export type ItemEntry = Readonly<z.infer<typeof itemEntrySchema>>;
export const noEntry = (id: string): ItemEntry => ({
  id,
  finish: '',
  keySet: '',
  suppliedBy: '',
  installedBy: '',
  wiredBy: '',
});

const aPercent = (what: string) =>
  z
    .number(`${what} must be a number.`)
    .min(0, `${what} cannot be below 0 %.`)
    .max(100, `${what} cannot be above 100 %.`)
    .nullable();
export const bidSchema = z.looseObject({
  projectNumber: aLine,
  address: aLine,
  drawnBy: aLine,
  checkedBy: aLine,
  currency: z.string().regex(/^[A-Z]{3}$/, 'A currency is three capital letters, such as USD.'),
  /** How numbers and dates are written, as a language tag. */
  locale: z
    .string()
    .regex(/^[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8})*$/, 'A locale is a language tag, such as en-US.'),
  /** Null: nobody said. Nothing is added then, and the bill says so. */
  taxPercent: aPercent('The tax'),
  markUpPercent: aPercent('The mark-up'),
});
export type Bid = Readonly<z.infer<typeof bidSchema>>;
export type BidField = Exclude<keyof typeof bidSchema.shape, number>;

export const noBid: Bid = {
  projectNumber: '',
  address: '',
  drawnBy: '',
  checkedBy: '',
  currency: 'USD',
  locale: 'en-US',
  taxPercent: null,
  markUpPercent: null,
};
