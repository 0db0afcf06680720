import { z } from 'zod';
import { factSchema } from '../model/fact.ts';
import { idSchema } from '../model/ids.ts';
import {
  amendmentSchema,
  floorSchema,
  hardwareSetSchema,
  instantSchema,
  type Opening,
  openingSchema,
  overrideSchema,
  type Project,
  setAsideSchema,
  setNumberSchema,
  spaceSchema,
  weightsSchema,
} from '../model/project.ts';
import { closetSchema, productSchema, runFields, runSchema, supplySchema } from '../model/power.ts';
import { bidSchema, itemEntrySchema, priceSchema } from '../model/bid.ts';
import { remarkSchema, verdictSchema } from '../model/verdict.ts';
import { floorPlanSchema, pinSchema } from '../model/floorPlan.ts';
import { standardSchema } from '../model/standard.ts';
import { photoSchema } from '../model/photo.ts';
import { codeBasisSchema } from '../codes/basis.ts';
import { historySchema } from '../model/history.ts';

/**
 * Every edit is a small named command. Undo, history and merge read the same commands, so a command carries
 * all it changes and nothing else. `null` in place of a thing removes it.
 */
export const anyFact = factSchema(z.union([z.string(), z.boolean(), z.number()]));
/** A part of the project by its address; absent `value` removes it. */
const partSchema = z.object({ record: z.string(), field: z.string(), value: z.unknown().optional() });

/** What it checks is an opening; the schema’s own type lets any further key stand, as files of newer versions need. */
const wholeOpening = openingSchema as z.ZodType<Opening>;

const edits = {
  setProject: z.object({
    kind: z.literal('setProject'),
    field: z.enum(['name', 'preparedBy', 'jurisdiction', 'notes', 'letter']),
    value: z.string(),
  }),
  setBasis: z.object({ kind: z.literal('setBasis'), value: codeBasisSchema }),
  setWeights: z.object({ kind: z.literal('setWeights'), value: weightsSchema }),
  setBuildingFact: z.object({
    kind: z.literal('setBuildingFact'),
    fact: z.string(),
    value: anyFact.nullable(),
  }),
  /** What most doors of the building are like; it says nothing of any door by itself. */
  setUsual: z.object({ kind: z.literal('setUsual'), fact: z.string(), value: anyFact.nullable() }),
  putFloor: z.object({ kind: z.literal('putFloor'), id: idSchema, value: floorSchema.nullable() }),
  putSpace: z.object({ kind: z.literal('putSpace'), id: idSchema, value: spaceSchema.nullable() }),
  putAmendment: z.object({
    kind: z.literal('putAmendment'),
    id: idSchema,
    value: amendmentSchema.nullable(),
    /** Where in the list a new one goes; the end when absent. Lets undo put it back where it stood. */
    index: z.number().int().min(0).optional(),
  }),
  putOpening: z.object({ kind: z.literal('putOpening'), id: idSchema, value: wholeOpening.nullable() }),
  setOpening: z.object({
    kind: z.literal('setOpening'),
    id: idSchema,
    field: z.enum(['mark', 'floorId', 'fromSpaceId', 'toSpaceId', 'notes']),
    value: z.string().nullable(),
  }),
  setFact: z.object({
    kind: z.literal('setFact'),
    id: idSchema,
    fact: z.string(),
    value: anyFact.nullable(),
  }),
  /** Adds an entry to the log of verdicts. It has no inverse: a verdict is taken back by a withdrawal, never removed. */
  appendVerdict: z.object({ kind: z.literal('appendVerdict'), id: idSchema, value: verdictSchema }),
  putRemark: z.object({ kind: z.literal('putRemark'), id: idSchema, value: remarkSchema.nullable() }),
  /** What is known of a photo: added, captioned, pointed at with arrows, or removed. */
  putPhoto: z.object({ kind: z.literal('putPhoto'), id: idSchema, value: photoSchema.nullable() }),
  putPlan: z.object({ kind: z.literal('putPlan'), id: idSchema, value: floorPlanSchema.nullable() }),
  /** Where an opening or a closet stands on a plan. */
  putPin: z.object({ kind: z.literal('putPin'), id: idSchema, value: pinSchema.nullable() }),
  setOverride: z.object({ kind: z.literal('setOverride'), id: idSchema, value: overrideSchema.nullable() }),
  putHardwareSet: z.object({
    kind: z.literal('putHardwareSet'),
    id: idSchema,
    value: hardwareSetSchema.nullable(),
  }),
  /** The price of an item or of one part number; null takes it back. */
  putPrice: z.object({ kind: z.literal('putPrice'), id: idSchema, value: priceSchema.nullable() }),
  putItemEntry: z.object({
    kind: z.literal('putItemEntry'),
    id: idSchema,
    value: itemEntrySchema.nullable(),
  }),
  /** Terms of the bid; those that are not named stay. */
  setBid: z.object({ kind: z.literal('setBid'), value: bidSchema.partial() }),
  /** How numbers were fixed before sets had openings; logs of that time are still read. Null forgets one. */
  keepSetNumbers: z.object({
    kind: z.literal('keepSetNumbers'),
    value: z.record(z.string().min(1), setNumberSchema.nullable()),
  }),
  putCloset: z.object({ kind: z.literal('putCloset'), id: idSchema, value: closetSchema.nullable() }),
  putSupply: z.object({ kind: z.literal('putSupply'), id: idSchema, value: supplySchema.nullable() }),
  putStandard: z.object({ kind: z.literal('putStandard'), id: idSchema, value: standardSchema.nullable() }),
  putProduct: z.object({ kind: z.literal('putProduct'), id: idSchema, value: productSchema.nullable() }),
  /** One answer about where the cable of an opening goes. */
  setRun: z.object({
    kind: z.literal('setRun'),
    id: idSchema,
    field: z.enum(runFields),
    value: z
      .object({
        value: z.union([z.string(), z.number()]),
        at: instantSchema.optional(),
        by: z.string().optional(),
      })
      .nullable(),
  }),
  putRun: z.object({ kind: z.literal('putRun'), id: idSchema, value: runSchema.nullable() }),
  /** What was set aside and is not dealt with yet; the whole list. */
  setAside: z.object({ kind: z.literal('setAside'), value: z.array(setAsideSchema) }),
  /** Parts of another copy with the history they come from; null is no history. One merge is one such edit. */
  takeParts: z.object({
    kind: z.literal('takeParts'),
    parts: z.array(partSchema),
    history: historySchema.nullable(),
  }),
  /** Somebody decided between values that stood side by side. */
  settle: z.object({ kind: z.literal('settle'), part: partSchema }),
} as const;

type EditOption = (typeof edits)[keyof typeof edits];
export const editSchema = z.discriminatedUnion('kind', Object.values(edits) as [EditOption, ...EditOption[]]);
export type Edit = Readonly<z.infer<typeof editSchema>>;

/** What a person did, with name and time: one or more edits that are done and undone together. */
export const commandSchema = z.object({
  id: idSchema,
  at: instantSchema,
  by: z.string(),
  label: z.string(),
  edits: z.array(editSchema).min(1),
  /** The copy that is being edited, for as long as nobody else can have seen what it counted. */
  device: z.string().min(1).optional(),
});
export type Command = Readonly<z.infer<typeof commandSchema>>;

export type CommandProblem =
  | { readonly kind: 'noSuchOpening'; readonly id: string }
  | { readonly kind: 'noSuchFact'; readonly fact: string }
  | { readonly kind: 'badValue'; readonly field: string; readonly says: string }
  | { readonly kind: 'markTaken'; readonly mark: string }
  | { readonly kind: 'setNumberTaken'; readonly number: string }
  | { readonly kind: 'verdictTaken'; readonly id: string };

export type Applied =
  | { readonly ok: true; readonly project: Project; readonly inverse: readonly Edit[] }
  | { readonly ok: false; readonly problem: CommandProblem };
