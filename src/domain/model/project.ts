import { z } from 'zod';
import { type Bid, bidSchema, type ItemEntry, itemEntrySchema, type Price, priceSchema } from './bid.ts';
import { type CodeBasis, codeBasisSchema } from '../codes/basis.ts';
import { factsSchema, type Facts } from './fact.ts';
import { type History, historySchema } from './history.ts';
import { idSchema, longestName } from './ids.ts';
import {
  type Closet,
  closetSchema,
  type Product,
  productSchema,
  type Run,
  runSchema,
  type Supply,
  supplySchema,
} from './power.ts';
import { type FloorPlan, floorPlanSchema, type Pin, pinSchema } from './floorPlan.ts';
import { type Standard, standardSchema } from './standard.ts';
import { type Photo, photoSchema } from './photo.ts';
import { useSchema } from './uses.ts';
import { type Remark, remarkSchema, verdictSchema, type Verdicts } from './verdict.ts';

/**
 * The project document. Everything is keyed by id and every fact carries its own stamp, so two copies can be
 * merged field by field. Objects are loose: what a newer version wrote is carried along.
 */
/** Local or world time of an event; always passed in, never read from a clock here. */
export const instantSchema = z.iso.datetime();

export const longestMark = 40;
const aName = (whenEmpty: string) =>
  z.string().min(1, whenEmpty).max(longestName, `A name has at most ${longestName} characters.`);
const lineSchema = z.string().max(longestName, `This has at most ${longestName} characters.`);

export const floorSchema = z.looseObject({
  id: idSchema,
  name: aName('A floor needs a name.'),
  /** Order from the lowest floor up; two floors may not share it. */
  level: z.number(),
});
export type Floor = Readonly<z.infer<typeof floorSchema>>;

export const securityLevels = ['public', 'general', 'staff', 'restricted', 'critical'] as const;
export type SecurityLevel = (typeof securityLevels)[number];

const longestFrom = 1_000;
export const spaceSchema = z.looseObject({
  id: idSchema,
  name: aName('A space needs a name.'),
  floorId: idSchema.nullable(),
  kind: z.enum(['room', 'corridor', 'stair', 'lobby', 'elevator', 'outside', 'roof', 'court']),
  securityLevel: z.enum(securityLevels).nullable(),
  /** Occupant load somebody gave, people; null is unknown. Where use and area come to another load, the larger governs. */
  occupantLoad: z.number().int().min(0).nullable(),
  /** What the floor is used for, as an occupant load table lists it; null is unknown. */
  use: useSchema.nullable(),
  /** Floor area as that use measures it, net or gross; null is unknown. */
  areaFt2: z
    .number()
    .min(0, 'The area cannot be below 0 ft².')
    .max(5_000_000, 'The area cannot be above 5,000,000 ft²; check the unit.')
    .nullable(),
  /** Longest way before a person has a choice of two ways; null is unknown. */
  commonPathFt: z
    .number()
    .min(0, 'The common path cannot be below 0 ft.')
    .max(5_000, 'The common path cannot be above 5,000 ft; check the unit.')
    .nullable(),
  /** What a building model says, where use or load were taken from it; absent where a person entered them. */
  useFrom: z.string().min(1).max(longestFrom).optional(),
  occupantLoadFrom: z.string().min(1).max(longestFrom).optional(),
  /** Of a space outdoors: true where leaving ends there, false where a fence or wall keeps people in; null is unknown. */
  publicWay: z.boolean().nullable(),
});
export type Space = Readonly<z.infer<typeof spaceSchema>>;

/** Leaving ends here. Where nobody said whether an outside space is a public way it counts as one, and is asked about. */
export function endsTheWay({ kind, publicWay }: Pick<Space, 'kind' | 'publicWay'>): boolean {
  return kind === 'outside' && publicWay !== false;
}

export const overrideSchema = z.looseObject({
  candidate: z.string().min(1),
  reason: z.string().min(1),
  by: z.string(),
  at: instantSchema,
});
export type Override = Readonly<z.infer<typeof overrideSchema>>;

export const openingSchema = z.looseObject({
  id: idSchema,
  mark: z
    .string()
    .min(1, 'An opening needs a mark.')
    .max(longestMark, `A mark has at most ${longestMark} characters.`),
  floorId: idSchema.nullable(),
  fromSpaceId: idSchema.nullable(),
  toSpaceId: idSchema.nullable(),
  facts: factsSchema,
  notes: z.string(),
  override: overrideSchema.nullable(),
  /** What a building model calls it for good (IFC GlobalId), so that the door is met again under any mark. */
  externalId: z.string().min(1).max(longestName).optional(),
});
/** Written out, because the loose schema would blur every key; the test holds it against the schema. */
export interface Opening {
  readonly id: string;
  readonly mark: string;
  readonly floorId: string | null;
  readonly fromSpaceId: string | null;
  readonly toSpaceId: string | null;
  readonly facts: Facts;
  readonly notes: string;
  readonly override: Override | null;
  readonly externalId?: string | undefined;
}

export const setNumberSchema = z.string().min(1, 'A set number cannot be empty.').max(40);

/**
 * A hardware set as it was issued. It is itself whatever the rules say today: what it was made of is kept to be compared
 * with what its openings ask for now, so that a change that meets all of them is a revision and no other set.
 */
export const hardwareSetSchema = z.looseObject({
  id: idSchema,
  number: setNumberSchema,
  /** A name somebody gave it; empty where it is named after its device. */
  name: lineSchema,
  revision: z.number().int().min(0).max(9999),
  /** By opening id. None: the number is not used any more, and no other set gets it. */
  members: z.record(idSchema, z.literal(true)),
  /** What it was made of when number and revision were fixed. */
  content: z.string(),
  /** What a set was known by before sets had members; absent once it has some. */
  formerly: z.string().optional(),
});
export type StoredSet = Readonly<z.infer<typeof hardwareSetSchema>>;

/** A rule the jurisdiction adds, in the user's words. It may forbid, ask for something or send to review. */
export const amendmentSchema = z.looseObject({
  id: idSchema,
  says: z.string().min(1, 'Say what the amendment asks.'),
  source: z.string().min(1, 'Name the ordinance or letter it comes from.'),
  effect: z.enum(['prohibit', 'require', 'signOff']),
  /** Facts that must all have these values for it to apply; empty means every opening. */
  when: z.record(z.string(), z.union([z.string(), z.boolean(), z.number()])),
  devices: z.array(z.string()),
  releases: z.array(z.string()),
  failModes: z.array(z.string()),
  /** The owner’s standard it comes from, with its edition; absent where the project entered it. */
  standard: z.string().optional(),
});
export type Amendment = Readonly<z.infer<typeof amendmentSchema>>;

/** Five near-ties: enough to choose among what is nearly as good, too little to bring a weak lock to the top. */
export const mostPreferencePoints = 10;

export const scoreParts = [
  'security',
  'simplicity',
  'effort',
  'cost',
  'durability',
  'appearance',
  'power',
] as const;
export type ScorePart = (typeof scoreParts)[number];
/** A device that the owner would rather have, by how many points of 100, and why. */
export const preferenceSchema = z.looseObject({
  points: z.number().min(0.1).max(mostPreferencePoints, `At most ${mostPreferencePoints} points.`),
  says: z.string().min(1, 'Say why it is preferred.').max(1_000),
  /** The owner’s standard it comes from, with its edition; absent where the project entered it. */
  standard: z.string().optional(),
});
export type Preference = Readonly<z.infer<typeof preferenceSchema>>;

export const weightsSchema = z.looseObject({
  ...(Object.fromEntries(scoreParts.map((part) => [part, z.number().min(0).max(100)])) as Record<
    ScorePart,
    z.ZodNumber
  >),
  /** By device. */
  preferred: z.record(z.string().min(1), preferenceSchema).optional(),
});
export type Weights = Readonly<Record<ScorePart, number>> & {
  readonly preferred?: Readonly<Record<string, Preference>> | undefined;
};
export const defaultWeights: Weights = {
  security: 30,
  simplicity: 25,
  effort: 12,
  cost: 12,
  durability: 9,
  appearance: 6,
  power: 6,
};

/**
 * Something in a file that could not be read: kept with its raw content and shown, never dropped in silence. It stays
 * in the project until a person has dealt with it, so a copy of the file still says what is missing.
 */
export const setAsideSchema = z.looseObject({
  where: z.string(),
  says: z.string(),
  raw: z.unknown(),
  /** The opening that lost it; absent where it concerns the whole project. */
  openingId: idSchema.optional(),
});
export type SetAside = Readonly<z.infer<typeof setAsideSchema>>;

export const projectNeedsName = 'A project needs a name.';

export const projectSchema = z.looseObject({
  id: idSchema,
  name: aName(projectNeedsName),
  preparedBy: lineSchema,
  jurisdiction: lineSchema,
  notes: z.string(),
  /** The letter to the authority as somebody edited it; empty while the one offered is used. */
  letter: z.string(),
  basis: codeBasisSchema,
  amendments: z.array(amendmentSchema),
  /** Facts of the whole building. */
  building: factsSchema,
  /** What the user says most doors here are like; taken at a door by one press, never by itself. */
  usual: factsSchema,
  weights: weightsSchema,
  floors: z.record(idSchema, floorSchema),
  spaces: z.record(idSchema, spaceSchema),
  openings: z.record(idSchema, openingSchema),
  closets: z.record(idSchema, closetSchema),
  supplies: z.record(idSchema, supplySchema),
  productBook: z.record(idSchema, productSchema),
  /** By the id of the opening. */
  runs: z.record(idSchema, runSchema),
  hardwareSets: z.record(idSchema, hardwareSetSchema),
  /** By item, or by item and part number. */
  prices: z.record(idSchema, priceSchema),
  itemBook: z.record(idSchema, itemEntrySchema),
  bid: bidSchema,
  /** The log of what reviewers decided, by id; only ever added to. */
  verdicts: z.record(idSchema, verdictSchema),
  /** Hash of each entry by its id, so that an entry cut out of the log is missed. */
  verdictIndex: z.record(idSchema, z.string()),
  remarks: z.record(idSchema, remarkSchema),
  /** What is known of each photo; the pictures are kept beside the project by their hash. */
  photos: z.record(idSchema, photoSchema),
  plans: z.record(idSchema, floorPlanSchema),
  /** By the id of the opening or closet. */
  pins: z.record(idSchema, pinSchema),
  /** Owners’ standards the project follows, by id. */
  standards: z.record(idSchema, standardSchema),
  setAside: z.array(setAsideSchema).optional(),
  history: historySchema.optional(),
});
export interface Project {
  readonly id: string;
  readonly name: string;
  readonly preparedBy: string;
  readonly jurisdiction: string;
  readonly notes: string;
  readonly letter: string;
  readonly basis: CodeBasis;
  readonly amendments: readonly Amendment[];
  readonly building: Facts;
  readonly usual: Facts;
  readonly weights: Weights;
  readonly floors: Readonly<Record<string, Floor>>;
  readonly spaces: Readonly<Record<string, Space>>;
  readonly openings: Readonly<Record<string, Opening>>;
  readonly closets: Readonly<Record<string, Closet>>;
  readonly supplies: Readonly<Record<string, Supply>>;
  readonly productBook: Readonly<Record<string, Product>>;
  readonly runs: Readonly<Record<string, Run>>;
  readonly hardwareSets: Readonly<Record<string, StoredSet>>;
  readonly prices: Readonly<Record<string, Price>>;
  readonly itemBook: Readonly<Record<string, ItemEntry>>;
  readonly bid: Bid;
  readonly verdicts: Verdicts;
  readonly verdictIndex: Readonly<Record<string, string>>;
  readonly remarks: Readonly<Record<string, Remark>>;
  readonly photos: Readonly<Record<string, Photo>>;
  readonly plans: Readonly<Record<string, FloorPlan>>;
  readonly pins: Readonly<Record<string, Pin>>;
  readonly standards: Readonly<Record<string, Standard>>;
  readonly setAside?: readonly SetAside[] | undefined;
  /** Who wrote which part; absent until the first edit. */
  readonly history?: History | undefined;
}

const natural = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });
export function compareMarks(a: string, b: string): number {
  return natural.compare(a, b);
}

/** Openings by floor from the lowest up, then by mark as people count (9 before 10); openings without a floor last. */
export function openingsInOrder(project: Project): readonly Opening[] {
  const level = (opening: Opening) => {
    const floor = opening.floorId === null ? undefined : project.floors[opening.floorId];
    return floor ? floor.level : Number.POSITIVE_INFINITY;
  };
  return Object.values(project.openings).toSorted((a, b) => {
    const [first, second] = [level(a), level(b)];
    return first === second ? compareMarks(a.mark, b.mark) : first - second;
  });
}
