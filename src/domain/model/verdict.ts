import { z } from 'zod';

/**
 * What a reviewer decided, once it is written: nothing replaces or removes an entry. A later entry stands beside it, and
 * one that is taken back is followed by a withdrawal with its reason.
 */
export const verdictKinds = [
  'approved',
  'approvedWithConditions',
  'refused',
  'passedToAuthority',
  'withdrawn',
] as const;
export type VerdictKind = (typeof verdictKinds)[number];

const seenFactSchema = z.looseObject({
  is: z.enum(['known', 'assumed', 'unknown']),
  value: z.union([z.string(), z.number(), z.boolean()]).nullable(),
  /** Where an assumption came from. */
  from: z.string().optional(),
});
export type SeenFact = Readonly<z.infer<typeof seenFactSchema>>;

/**
 * What lay before the reviewer at one opening. What an older file did not keep is absent, and is not compared.
 */
export const sightSchema = z.looseObject({
  mark: z.string(),
  /** Arrangement, `device/failMode/release`; null where nothing was chosen. */
  candidate: z.string().nullable(),
  state: z.string().optional(),
  facts: z.record(z.string(), seenFactSchema),
  /** Facts that what is signed for reads by itself: a change of one of them is a change of the question. */
  weighs: z.array(z.string()).optional(),
  reasons: z.array(z.looseObject({ flag: z.string(), grade: z.string(), says: z.string() })).optional(),
  /** Clauses that spoke here: the sections they were read in, with edition, and a mark of their text. */
  rules: z.record(z.string(), z.looseObject({ edition: z.string(), text: z.string() })).optional(),
  /** What the rules ask for, warn of or allow, in sentences. */
  asks: z.array(z.string()).optional(),
  parts: z.array(z.string()).optional(),
  /** What happens in each condition. */
  table: z.record(z.string(), z.string()).optional(),
  /** Severe findings of the building here, by what was found and where. */
  building: z.record(z.string(), z.string()).optional(),
});
export type Sight = Readonly<z.infer<typeof sightSchema>>;

const sawSchema = z.looseObject({
  basis: z.string(),
  /** Version of the program that decided; empty where an older file did not keep it. */
  program: z.string(),
  amendments: z.record(z.string(), z.looseObject({ says: z.string(), source: z.string() })),
  openings: z.record(z.string(), sightSchema),
  /** What was found about the building where it concerns no single opening. */
  building: z.array(z.string()).optional(),
});

const keySchema = z.looseObject({
  algorithm: z.enum(['ECDSA P-256', 'Ed25519']),
  /** The public half, as a JSON web key. */
  publicKey: z.record(z.string(), z.unknown()),
  /** SHA-256 of the public half, to read out and compare. */
  print: z.string(),
});
export type ReviewerKey = Readonly<z.infer<typeof keySchema>>;

const line = z.string().max(200);

export const verdictSchema = z.looseObject({
  id: z.string().min(1).max(64),
  /** 1 for the first. Two entries may share it after two copies were merged. */
  sequence: z.number().int().min(1),
  openingIds: z.array(z.string()),
  /** What was asked (`flag` of a reason); empty stands for everything that was asked at these openings. */
  questions: z.array(z.string()),
  verdict: z.enum(verdictKinds),
  by: line.min(1),
  role: line,
  firm: line,
  license: line,
  /** The document behind it: a letter of the authority, a submittal number. */
  reference: line,
  on: z.iso.date(),
  /** When it was written, by the clock of that device; null where an older file did not keep it. */
  at: z.iso.datetime().nullable(),
  reason: z.string(),
  conditions: z.array(z.string()),
  /** The entry that a withdrawal takes back. */
  withdraws: z.string().nullable(),
  saw: sawSchema,
  previousHash: z.string(),
  /** Empty for an entry of a file before hashes were kept. */
  hash: z.string(),
  signature: z.string().optional(),
  key: keySchema.optional(),
});
export type Verdict = Readonly<z.infer<typeof verdictSchema>>;
export type Verdicts = Readonly<Record<string, Verdict>>;

/** In the order they were written; of two with one number the earlier date first. */
export function inSequence(verdicts: Verdicts): readonly Verdict[] {
  return Object.values(verdicts).toSorted(
    (a, b) => a.sequence - b.sequence || compare(a.at ?? a.on, b.at ?? b.on) || compare(a.id, b.id),
  );
}
const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

/** A question or a remark at an opening, with what was answered, until somebody closes it. */
const saidSchema = z.looseObject({
  id: z.string().min(1),
  text: z.string().min(1),
  by: z.string(),
  at: z.iso.datetime(),
});
type Said = Readonly<z.infer<typeof saidSchema>>;
export const remarkSchema = z.looseObject({
  id: z.string().min(1).max(64),
  openingId: z.string(),
  kind: z.enum(['comment', 'question']),
  text: z.string().min(1, 'Say what it is about.').max(2000),
  by: z.string(),
  at: z.iso.datetime(),
  answers: z.record(z.string(), saidSchema),
  closed: z.looseObject({ by: z.string(), at: z.iso.datetime() }).nullable(),
});
export type Remark = Readonly<z.infer<typeof remarkSchema>>;

/** The oldest first. */
export function answersInOrder({ answers }: Pick<Remark, 'answers'>): readonly Said[] {
  return Object.values(answers).toSorted((a, b) => compare(a.at, b.at) || compare(a.id, b.id));
}
