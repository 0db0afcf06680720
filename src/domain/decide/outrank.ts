import { type Candidate, candidates } from '../devices/candidates.ts';
import { type FitRow, fitCell } from '../fit/matrix.ts';
import type { FactKey } from '../model/fields.ts';
import { fieldInfo } from '../model/fields.ts';
import type { ScorePart, Weights } from '../model/project.ts';
import { add, type CandidateSet, emptySet } from './candidateSet.ts';
import { partTenths, preferenceTenths, type ScoreFacts } from './score.ts';
import type { Totals } from './totals.ts';

/**
 * Which arrangements could still come before the one that leads, once the answers are known that the ranking reads
 * and nobody has given yet. Each part of a score reads facts of its own, so what two candidates can differ by is the
 * sum of what they can differ by in each part: every combination of answers is covered, and none is left out.
 */

/** What each part reads that may be unknown when something is recommended; latch and leaf are known by then. */
const readBy: Readonly<Partial<Record<ScorePart, readonly (FactKey & keyof ScoreFacts)[]>>> = {
  security: ['securityNeed', 'frameMaterial', 'frameGrouted'],
  durability: ['traffic'],
  appearance: ['appearance'],
  effort: ['frameGrouted', 'workStatus'],
};
const otherParts: readonly ScorePart[] = ['simplicity', 'cost', 'power'];

/** Higher points first; among equals the order of the candidates, which never changes. */
export function comesBefore(tenths: Int32Array, one: number, other: number): boolean {
  const ahead = (tenths[one] as number) - (tenths[other] as number);
  return ahead > 0 || (ahead === 0 && one < other);
}

const remembered = new WeakMap<Totals, Map<string, CandidateSet>>();

/** `rows` are the rows of the fit table still possible: one or none leave nothing open there. */
export function mayOutrank(
  leader: Candidate,
  totals: Totals,
  rows: readonly FitRow[],
  weights: Weights,
): CandidateSet {
  let byLeader = remembered.get(totals);
  if (!byLeader) remembered.set(totals, (byLeader = new Map()));
  const key = `${leader.index} ${rows.length > 1 ? rows.map((row) => row.row).join() : ''}`;
  let found = byLeader.get(key);
  if (!found) {
    found = workOut(leader, totals, rows, weights);
    byLeader.set(key, found);
  }
  return found;
}

function workOut(
  leader: Candidate,
  { facts }: Totals,
  rows: readonly FitRow[],
  weights: Weights,
): CandidateSet {
  const found = emptySet();
  const ofLeader = preferenceTenths(leader.deviceId, weights);
  const most = Int32Array.from(candidates, ({ deviceId }) => preferenceTenths(deviceId, weights) - ofLeader);
  const gain = (surveys: readonly ScoreFacts[], part: ScorePart) => {
    const best = new Int32Array(candidates.length).fill(-1_000_000);
    for (const survey of surveys) {
      const own = partTenths(part, leader, survey, undefined, weights);
      for (const { index } of candidates) {
        const ahead = partTenths(part, candidates[index] as Candidate, survey, undefined, weights) - own;
        if (ahead > (best[index] as number)) best[index] = ahead;
      }
    }
    for (let index = 0; index < most.length; index++) {
      most[index] = (most[index] as number) + (best[index] as number);
    }
  };
  for (const [part, reads] of Object.entries(readBy) as [ScorePart, readonly (keyof ScoreFacts)[]][]) {
    // Effort hangs on the row of the fit table as well.
    if (part !== 'effort') gain(completions(facts, reads), part);
  }
  for (const part of otherParts) gain([facts], part);
  addEffort(leader, facts, rows, weights, most);
  for (const { index } of candidates) {
    const ahead = most[index] as number;
    if (index !== leader.index && (ahead > 0 || (ahead === 0 && index < leader.index))) add(found, index);
  }
  return found;
}

function addEffort(
  leader: Candidate,
  facts: ScoreFacts,
  rows: readonly FitRow[],
  weights: Weights,
  most: Int32Array,
): void {
  // With several rows possible the door may also turn out to be in none of them.
  const possible = rows.length === 1 ? rows : [...rows, undefined];
  const surveys = completions(facts, readBy.effort ?? []);
  const effort = (candidate: Candidate, row: FitRow | undefined, survey: ScoreFacts) =>
    partTenths('effort', candidate, survey, row && fitCell(row, candidate.deviceId), weights);
  for (const candidate of candidates) {
    const ahead = possible.flatMap((row) =>
      surveys.map((survey) => effort(candidate, row, survey) - effort(leader, row, survey)),
    );
    most[candidate.index] = (most[candidate.index] as number) + Math.max(...ahead);
  }
}

/** Every way in which the facts that are unknown among `keys` can turn out. */
function completions(facts: ScoreFacts, keys: readonly (keyof ScoreFacts)[]): readonly ScoreFacts[] {
  return keys.reduce<readonly ScoreFacts[]>(
    (surveys, key) =>
      facts[key] === undefined
        ? surveys.flatMap((survey) => valuesOf(key as FactKey).map((value) => ({ ...survey, [key]: value })))
        : surveys,
    [facts],
  );
}

function valuesOf(key: FactKey): readonly (string | boolean)[] {
  const { kind, options } = fieldInfo(key);
  return kind === 'yesNo' ? [true, false] : Object.keys(options ?? {});
}

/** Facts that are unknown and by whose answer one of `others` comes nearer to the leader or falls farther behind. */
export function rankingGaps(
  leader: Candidate,
  others: readonly Candidate[],
  facts: ScoreFacts,
  weights: Weights,
): readonly FactKey[] {
  return (Object.entries(readBy) as [ScorePart, readonly (FactKey & keyof ScoreFacts)[]][]).flatMap(
    ([part, reads]) => {
      const ahead = (other: Candidate, survey: ScoreFacts) =>
        partTenths(part, other, survey, undefined, weights) -
        partTenths(part, leader, survey, undefined, weights);
      const tells = (key: FactKey & keyof ScoreFacts) =>
        completions(
          facts,
          reads.filter((other) => other !== key),
        ).some((survey) => {
          const answers = completions(survey, [key]);
          return others.some((other) => new Set(answers.map((one) => ahead(other, one))).size > 1);
        });
      return reads.filter((key) => facts[key] === undefined && tells(key));
    },
  );
}
