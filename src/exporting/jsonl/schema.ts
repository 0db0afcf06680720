import { z } from 'zod';
import { failModeWords } from '../../domain/words/arrangement.ts';
import { gradeWords } from '../../domain/words/signOff.ts';
import { stateWords } from '../../domain/words/states.ts';
import { releases } from '../../domain/devices/candidates.ts';
import { deviceIds } from '../../domain/devices/devices.ts';
import { factKeys } from '../../domain/model/fields.ts';
import { reviewStateWords } from '../../domain/review/words.ts';
import { differenceWords } from '../../domain/schedules/otherBasis.ts';
import { conditionIds } from '../../domain/simulate/conditions.ts';
import { severityWords } from '../../domain/simulate/outcome.ts';

/**
 * What goes out to other programs, known once: types of the writers, the published JSON Schema and its check are read
 * from here. Ids stand where a program compares, words beside them. Figures carry their unit in their name.
 */
const list = <T extends z.ZodType>(of: T) => z.array(of).readonly();
const oneOf = <T extends string>(ids: readonly T[]) => z.enum(ids as readonly [T, ...T[]]);
const keysOf = <T extends string>(of: Readonly<Record<T, unknown>>) => oneOf(Object.keys(of) as T[]);

const marks = list(z.string());
const cites = list(z.string()).describe('Sections with their edition.');
const severity = keysOf(severityWords);
const grade = keysOf(gradeWords);
const factKey = oneOf(factKeys);
const device = oneOf(deviceIds);
const failMode = keysOf(failModeWords);
const release = keysOf(releases);
const trades = z.string().describe('Trade that does the work.');

const saidByRule = z.strictObject({ rule: z.string(), says: z.string(), cites });

const wayRecordSchema = z.strictObject({
  device,
  failMode,
  release,
  score: z.number().describe('Points of 100 once the work is done, to a tenth.'),
  changes: list(
    z.strictObject({
      field: factKey,
      value: z.union([z.string(), z.number(), z.boolean()]),
      trade: trades,
      says: z.string(),
    }),
  ),
});

const comparisonRecordSchema = z
  .strictObject({
    basis: z.string(),
    differences: list(
      z.strictObject({
        kind: keysOf(differenceWords),
        now: z.string().describe('Empty where only the other basis says something.'),
        instead: z.string().describe('Empty where only this basis says something.'),
        rules: list(z.strictObject({ rule: z.string(), cites })),
      }),
    ).describe('Empty where the opening comes out the same.'),
  })
  .describe('Where another basis was asked for: what it would change.');

export const decisionRecordSchema = z.strictObject({
  mark: z.string(),
  globalId: z.string().nullable().describe('GlobalId of the door in the building model it came from.'),
  set: z.string().nullable().describe('Number of the hardware set; null while nothing is chosen.'),
  setFixed: z.boolean().describe('The project keeps this number in later issues.'),
  state: keysOf(stateWords),
  complete: z.boolean().describe('Settled, and nothing unknown can change what is ordered.'),
  device: device.nullable(),
  failMode: failMode.nullable(),
  release: release.nullable(),
  onFireAlarm: z
    .string()
    .nullable()
    .describe('What happens on fire alarm, in the words of the schedule; null while nothing is chosen.'),
  score: z.number().nullable().describe('Points of 100, to a tenth.'),
  review: keysOf(reviewStateWords).describe('Where the reviewer’s mark stands.'),
  signOff: list(z.strictObject({ grade, rule: z.string().nullable(), says: z.string() })),
  requires: list(z.strictObject({ ...saidByRule.shape, items: list(z.string()) })),
  maybe: list(
    z.strictObject({ rule: z.string(), says: z.string(), items: list(z.string()), facts: list(factKey) }),
  ).describe('Needed, or ruled out by the facts named.'),
  cautions: list(saidByRule),
  findings: list(z.strictObject({ ...saidByRule.shape, field: z.string(), severity: z.string() })),
  missing: list(factKey).describe('Facts not known on which something still waits.'),
  rejected: z.int().describe('How many arrangements the rules and the door ruled out.'),
  waysForward: z
    .strictObject({ says: z.string(), ways: list(wayRecordSchema) })
    .nullable()
    .describe('Where no hardware works: the least work after which something would; null everywhere else.'),
  doubts: list(z.string()).describe('What the file held and could not be read or cannot be right.'),
  basis: z.string(),
  caution: z.string(),
  comparison: comparisonRecordSchema.optional(),
});

const findingRecordSchema = z.strictObject({
  severity,
  kind: z.string().describe('What was found, by id; kinds are added.'),
  says: z.string(),
  conditions: list(oneOf(conditionIds)).describe('Empty where it does not depend on them.'),
  space: z.string().nullable().describe('Name of the space it speaks of.'),
  openings: marks,
  path: marks.describe('In the order in which a person meets them.'),
  rule: z.string().nullable().describe('Null where the walk through the building found it.'),
  cites,
});

const runRecordSchema = z.strictObject({
  feet: z.number().nullable().describe('One way, without slack.'),
  from: z.string(),
  cables: list(z.strictObject({ use: z.string(), type: z.string(), count: z.number() })),
  awg: z.number().nullable(),
  mm2: z.string().nullable(),
  dropV: z.number().nullable(),
  atLockV: z.number().nullable(),
  atStartV: z.number().nullable(),
  endOfBatteryV: z.number().nullable(),
  mustWorkAtV: z.number().nullable(),
});

const openingPowerSchema = z.strictObject({
  mark: z.string(),
  volts: z.number().nullable(),
  source: z.string(),
  closet: z.string().nullable(),
  supply: z.string().nullable(),
  loads: list(
    z.strictObject({
      class: z.string(),
      count: z.number(),
      when: z.string(),
      steadyA: z.number().nullable(),
      peakA: z.number().nullable(),
      from: z.string().nullable().describe('A source, or the product book.'),
    }),
  ),
  standingA: z.number(),
  releaseA: z.number(),
  run: runRecordSchema,
  transferConductors: z.number().nullable(),
});

const supplyRecordSchema = z.strictObject({
  name: z.string(),
  closet: z.string().nullable(),
  volts: z.number(),
  amps: z.number(),
  class2: z.boolean(),
  continuousA: z.number(),
  peakA: z.number(),
  usableA: z.number(),
  outputs: z.number(),
  outputsUsed: z.number(),
  batteryAh: z.number().nullable(),
  neededAh: z.number().nullable(),
  nextAh: z.number().nullable(),
  runtimeH: z.number().nullable(),
  openings: marks,
});

const takeoffRecordSchema = z.strictObject({
  kind: z.string(),
  item: z.string(),
  quantity: z.number(),
  unit: z.string(),
  boxes: list(z.strictObject({ ft: z.number(), count: z.number() })),
  furnished: z.string(),
  installed: z.string(),
  wired: z.string(),
  section: z.string(),
});

const powerRecordsSchema = z.strictObject({
  openings: list(openingPowerSchema),
  supplies: list(supplyRecordSchema),
  takeoff: list(takeoffRecordSchema),
  findings: list(
    z.strictObject({
      severity: z.string(),
      kind: z.string(),
      says: z.string(),
      source: z.string(),
      openings: marks,
      supply: z.string().nullable(),
    }),
  ),
});

const buildingRecordSchema = z.strictObject({
  findings: list(findingRecordSchema),
  power: powerRecordsSchema,
});

export const decisionsFormat = 'latchward-decisions';
export const decisionsVersion = 1;

/** The whole project's decisions as one document. */
export const decisionsFileSchema = z.strictObject({
  format: z.literal(decisionsFormat),
  version: z.literal(decisionsVersion),
  project: z.string(),
  basis: z.string(),
  standing: z.string().describe('What waits for a signature; empty where nothing does.'),
  caution: z.string(),
  openings: list(decisionRecordSchema),
  building: buildingRecordSchema,
});

export type DecisionRecord = Readonly<z.infer<typeof decisionRecordSchema>>;
export type WayRecord = Readonly<z.infer<typeof wayRecordSchema>>;
export type ComparisonRecord = Readonly<z.infer<typeof comparisonRecordSchema>>;
export type BuildingRecord = Readonly<z.infer<typeof buildingRecordSchema>>;
export type PowerRecords = Readonly<z.infer<typeof powerRecordsSchema>>;
export type OpeningPowerRecord = Readonly<z.infer<typeof openingPowerSchema>>;
export type SupplyRecord = Readonly<z.infer<typeof supplyRecordSchema>>;
export type TakeoffRecord = Readonly<z.infer<typeof takeoffRecordSchema>>;
export type SaidByRule = Readonly<z.infer<typeof saidByRule>>;
export type DecisionsFile = Readonly<z.infer<typeof decisionsFileSchema>>;
