import { type Candidate, candidates, type Release } from '../devices/candidates.ts';
import type { DeviceId } from '../devices/devices.ts';
import type { Cell } from '../fit/matrix.ts';
import { fitNotes, groutNote, transferHours } from '../fit/notes.ts';
import { limitingStrength, type StrengthValues } from '../fit/strength.ts';
import type { FactValue } from '../model/fields.ts';
import { type Preference, type ScorePart, scoreParts, type Weights } from '../model/project.ts';

/**
 * Ranking of what the rules leave. Every part is 0 to 100; points are whole tenths, so the parts of a score
 * add up to it exactly. All figures here are common practice without a source: they rank, they prove nothing.
 */
export interface ScoredPart {
  readonly part: ScorePart;
  /** 0 (worst) to 100 (best). */
  readonly value: number;
  readonly weight: number;
  /** Tenths of a point out of 1000. */
  readonly tenths: number;
}

export interface Score {
  readonly tenths: number;
  readonly parts: readonly ScoredPart[];
  /** What the owner’s preference adds to the parts; absent where the device is not a preferred one. */
  readonly preference?: { readonly tenths: number; readonly because: Preference } | undefined;
}

/** What of the opening the ranking looks at. A value left out is unknown and ranked as the middle case. */
export interface ScoreFacts extends StrengthValues {
  readonly securityNeed?: FactValue<'securityNeed'> | undefined;
  readonly traffic?: FactValue<'traffic'> | undefined;
  readonly appearance?: FactValue<'appearance'> | undefined;
  /** Mortar is chipped out of a frame in place only. */
  readonly workStatus?: FactValue<'workStatus'> | undefined;
  /** The owner asks that leaving is delayed or controlled: what does not do that misses the purpose of the lock. */
  readonly wishedRelease?: 'delayed' | 'controlled' | undefined;
  /** The rules leave nothing electric that stays locked without power: unlocking then is asked, and marks nothing down. */
  readonly failSafeOnly?: boolean | undefined;
  /** What holds a rated leaf while people are held has a latch of its own before a magnet beside a second lock. */
  readonly fireRated?: boolean | undefined;
}

export const needLbf = { low: 300, medium: 600, high: 1000, critical: 1500 } as const;
/** What unlocking on lost power takes away, of 100: nothing where little is at stake. */
const failSafeCost = { low: 0, medium: 20, high: 40, critical: 60 } as const;
/**
 * A battery lock stands alone: no wire tells anybody that it is forced, held or dead, and none locks or unlocks it from
 * elsewhere. It counts only where a wire can come, since without one no wired lock is left to compare it with. At a
 * medium need it outweighs what the wire costs: the entrance of a building is not left to batteries for its price.
 */
const aloneCost = { low: 5, medium: 40, high: 50, critical: 60 } as const;
export const trafficCyclesK = { light: 100, medium: 250, heavy: 500, extreme: 1000 } as const;

/** Fewest special arrangements first: mechanical freedom needs no inspection, staff release needs the most. */
const simplicity: Record<Release, number> = {
  free: 100,
  stairReentry: 75,
  doorSwitch: 60,
  sensor: 45,
  keyInside: 40,
  lobby: 35,
  delayed: 30,
  clinical: 25,
  controlled: 20,
  attended: 10,
  credentialOut: 5,
  buttonOnly: 0,
  alarmOnly: 0,
  none: 0,
};

/** Ways in that a release opens for somebody outside: a sensor can be tripped, a delay ends, staff can be asked. */
const releaseCost: Partial<Record<Release, number>> = {
  sensor: 10,
  buttonOnly: 5,
  delayed: 10,
  doorSwitch: 5,
};

function clamp(value: number): number {
  return value < 0 ? 0 : value > 100 ? 100 : value;
}

function strengthValue(device: DeviceId, facts: ScoreFacts, need: keyof typeof needLbf): number {
  const { lbf, highestLbf } = limitingStrength(device, facts);
  // An unmeasured latch or jamb gives a span; its middle ranks, the report shows both ends.
  return Math.min(1, (lbf + highestLbf) / 2 / needLbf[need]) * 100;
}

/** Taken from security where a lock does not do what it is wanted for: it guards nothing that was meant. */
const missedPurposeCost = 100;

/**
 * A simpler way out counts for nothing where the owner may have, and asks for, a lock that holds people: letting them
 * out at once is what was not wanted, and with a point for it a battery lock would lead on a leaf that takes no
 * delayed bar. Common practice, no source.
 */
function simplicityValue(
  { release, device }: Candidate,
  { wishedRelease: wished, fireRated }: Pick<ScoreFacts, 'wishedRelease' | 'fireRated'>,
): number {
  if (wished !== undefined && release !== wished) return 0;
  // A delay on a magnet is two things to sign for: nothing latches the leaf, and people are held.
  // On a rated leaf the same is true of a magnet or bolt that holds people for staff: the latch is a second lock beside it.
  const twoLocks =
    release === 'delayed' || (fireRated === true && (release === 'controlled' || release === 'lobby'));
  return simplicity[release] - (twoLocks && !device.keepsLatch ? 20 : 0);
}

function securityValue(
  candidate: Candidate,
  strength: number,
  need: keyof typeof needLbf,
  { wishedRelease: wished, failSafeOnly }: Pick<ScoreFacts, 'wishedRelease' | 'failSafeOnly'>,
): number {
  const missed = wished !== undefined && candidate.release !== wished ? missedPurposeCost : 0;
  const powerLoss = candidate.failMode === 'safe' && failSafeOnly !== true ? failSafeCost[need] : 0;
  const alone = candidate.failMode === 'asIs' ? aloneCost[need] : 0;
  const opened = wished === candidate.release ? 0 : (releaseCost[candidate.release] ?? 0);
  return clamp(strength - powerLoss - alone - opened - missed);
}

function workHours(candidate: Candidate, cell: Cell | undefined, facts: ScoreFacts): number {
  let hours = candidate.device.laborH;
  if (cell) for (const note of cell.notes) hours += fitNotes[note]?.hours ?? 0;
  if (cell?.transfer) hours += transferHours;
  if (facts.frameGrouted === true && facts.workStatus !== 'new') {
    hours += fitNotes[groutNote(candidate.device) ?? 0]?.hours ?? 0;
  }
  return hours;
}

function power(candidate: Candidate): number {
  const { device } = candidate;
  // Batteries are changed by hand, door by door, for as long as the lock hangs there.
  if (!device.wired) return device.family === 'battery' ? 45 : 100;
  const allDay = device.holdsWith === 'power' || candidate.failMode === 'safe';
  return clamp(allDay ? 80 - 60 * device.steadyA24 : 100 - 2 * device.inrushA24);
}

function appearance(candidate: Candidate, wanted: FactValue<'appearance'> | undefined): number {
  const { discreet } = candidate.device;
  if (wanted === 'showpiece') return discreet * discreet;
  if (wanted === 'visible') return 10 * discreet;
  return 60 + 4 * discreet;
}

function value(part: ScorePart, candidate: Candidate, facts: ScoreFacts, cell: Cell | undefined): number {
  switch (part) {
    case 'security': {
      const need = facts.securityNeed ?? 'medium';
      const strength = strengthValue(candidate.deviceId, facts, need);
      return securityValue(candidate, strength, need, facts);
    }
    case 'simplicity':
      return simplicityValue(candidate, facts);
    case 'effort':
      return clamp(100 - 12 * workHours(candidate, cell, facts));
    case 'cost':
      return 100 - 11 * (candidate.device.costRank - 1);
    case 'durability':
      return Math.min(1, candidate.device.cyclesK / trafficCyclesK[facts.traffic ?? 'medium']) * 100;
    case 'appearance':
      return appearance(candidate, facts.appearance);
    case 'power':
      return power(candidate);
  }
}

function tenths(value: number, weight: number, total: number): number {
  return Math.round((value * weight * 10) / total);
}

/** The owner’s preference for a device, in tenths of a point: it ranks what the rules leave, as every part does. */
export function preferenceTenths(device: DeviceId, { preferred }: Weights): number {
  return Math.round((preferenceOf(device, preferred)?.points ?? 0) * 10);
}

const preferenceOf = (device: DeviceId, preferred: Weights['preferred']): Preference | undefined =>
  preferred !== undefined && Object.hasOwn(preferred, device) ? preferred[device] : undefined;

function sumOf(weights: Weights): number {
  let total = 0;
  for (const part of scoreParts) total += weights[part];
  // All weights zero: nothing to rank by, so every candidate ties at zero.
  return total === 0 ? 1 : total;
}

type Need = NonNullable<ScoreFacts['securityNeed']>;
const needs = Object.keys(needLbf) as readonly Need[];
const traffics = Object.keys(trafficCyclesK) as readonly (keyof typeof trafficCyclesK)[];
const looks: readonly FactValue<'appearance'>[] = ['standard', 'visible', 'showpiece'];
const wishes: readonly ScoreFacts['wishedRelease'][] = [undefined, 'delayed', 'controlled'];

/** Tenths of every part that door, frame and latch do not touch, worked out once for a set of weights. */
interface Ranking {
  readonly total: number;
  readonly weights: Weights;
  /** By traffic, by appearance, by what the owner asks for, by rated or not, by candidate. */
  readonly fixed: readonly (readonly (readonly (readonly Int32Array[])[])[])[];
}
const rankings = new WeakMap<Weights, Ranking>();

function rankingFor(weights: Weights): Ranking {
  let ranking = rankings.get(weights);
  if (!ranking) {
    const total = sumOf(weights);
    const fixedParts = scoreParts.filter((part) => part !== 'security' && part !== 'effort');
    const fixed = traffics.map((traffic) =>
      looks.map((appearance) =>
        wishes.map((wishedRelease) =>
          [false, true].map((fireRated) => {
            const facts = { traffic, appearance, wishedRelease, fireRated };
            return Int32Array.from(candidates, (candidate) =>
              fixedParts.reduce(
                (sum, part) => sum + tenths(value(part, candidate, facts, undefined), weights[part], total),
                preferenceTenths(candidate.deviceId, weights),
              ),
            );
          }),
        ),
      ),
    );
    ranking = { total, weights, fixed };
    rankings.set(weights, ranking);
  }
  return ranking;
}

/**
 * Totals of all candidates in tenths of a point, into `into` by candidate index; the same numbers as `score`.
 * Strength is judged once per device, not once per candidate.
 */
export function scoreAll(
  facts: ScoreFacts,
  cellOf: (candidate: Candidate) => Cell | undefined,
  weights: Weights,
  into: Int32Array,
): void {
  const { total, fixed } = rankingFor(weights);
  const base =
    fixed[traffics.indexOf(facts.traffic ?? 'medium')]?.[looks.indexOf(facts.appearance ?? 'standard')]?.[
      wishes.indexOf(facts.wishedRelease)
    ]?.[facts.fireRated === true ? 1 : 0];
  const need = needs.includes(facts.securityNeed as Need) ? (facts.securityNeed as Need) : 'medium';
  let device: DeviceId | undefined;
  let strength = 0;
  let effort = 0;
  // Candidates stand in order of device.
  for (let index = 0; index < candidates.length; index++) {
    const candidate = candidates[index] as Candidate;
    if (candidate.deviceId !== device) {
      device = candidate.deviceId;
      strength = strengthValue(device, facts, need);
      effort = tenths(
        clamp(100 - 12 * workHours(candidate, cellOf(candidate), facts)),
        weights.effort,
        total,
      );
    }
    into[index] =
      (base?.[index] ?? 0) +
      effort +
      tenths(securityValue(candidate, strength, need, facts), weights.security, total);
  }
}

/** What one part brings a candidate, in tenths of a point. */
export function partTenths(
  part: ScorePart,
  candidate: Candidate,
  facts: ScoreFacts,
  cell: Cell | undefined,
  weights: Weights,
): number {
  return tenths(value(part, candidate, facts, cell), weights[part], sumOf(weights));
}

/** The total with its parts. */
export function score(
  candidate: Candidate,
  facts: ScoreFacts,
  cell: Cell | undefined,
  weights: Weights,
): Score {
  const total = sumOf(weights);
  const parts = scoreParts.map((part) => {
    const worth = value(part, candidate, facts, cell);
    return { part, value: worth, weight: weights[part], tenths: tenths(worth, weights[part], total) };
  });
  const because = preferenceOf(candidate.deviceId, weights.preferred);
  const more = preferenceTenths(candidate.deviceId, weights);
  return {
    tenths: parts.reduce((sum, one) => sum + one.tenths, more),
    parts,
    ...(because === undefined ? {} : { preference: { tenths: more, because } }),
  };
}

/** Closer than this and the ranking is called a near-tie: 2 points of 100. */
export const nearTieTenths = 20;
