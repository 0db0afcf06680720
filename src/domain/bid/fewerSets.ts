import type { Edit } from '../commands/command.ts';
import type { Decision } from '../decide/decision.ts';
import { pointsInWords } from '../words/ranking.ts';
import { candidateInWords, releaseInWords } from '../words/arrangement.ts';
import { nearTieTenths } from '../decide/score.ts';
import { openingsInOrder, type Opening, type Project } from '../model/project.ts';
import { setNumbersOf } from '../sets/sets.ts';
import { counted } from '../text/counted.ts';
import { midSentence } from '../text/midSentence.ts';
import { chooseFewest } from './cover.ts';
import { type Way, waysOf } from './ways.ts';

/** One opening that gives up its recommendation so that it needs no set of its own. */
export interface Change {
  readonly openingId: string;
  readonly mark: string;
  readonly candidateId: string;
  readonly lost: number;
  /** "409 from HS-12 to HS-5: battery-powered lock instead of …; gives up 1.4 points of 100." */
  readonly says: string;
}

export interface FewerSets {
  readonly before: number;
  readonly after: number;
  /** Fewer than this cannot be, whatever is given up within what is allowed. */
  readonly least: number;
  readonly changes: readonly Change[];
  readonly says: string;
}

/** What may be given up at an opening, to choose from. */
export const allowances = [
  { tenths: 10, name: '1 point of 100' },
  { tenths: nearTieTenths, name: '2 points of 100, a near-tie' },
  { tenths: 50, name: '5 points of 100' },
  { tenths: 100, name: '10 points of 100' },
] as const;

export interface OpeningWays {
  readonly opening: Opening;
  /** Number of its set as it stands. */
  readonly set: string;
  readonly ways: readonly Way[];
}

/** The ways of every opening that has a set, to be worked out once and asked for several allowances. */
export function allWays(
  project: Project,
  decisions: ReadonlyMap<string, Decision>,
  mostLost: number,
): readonly OpeningWays[] {
  const numbers = setNumbersOf(project, decisions);
  return openingsInOrder(project).flatMap((opening) => {
    const decision = decisions.get(opening.id);
    const ways = decision ? waysOf(project, opening, decision, mostLost) : [];
    return ways.length === 0 ? [] : [{ opening, set: numbers.get(opening.id) ?? '', ways }];
  });
}

/** The fewest sets found when each opening may give up so much of its score, with what each merge gives up. */
export function fewerSets(all: readonly OpeningWays[], mostLost: number): FewerSets {
  const allowed = all.map(({ opening, set, ways }) => ({
    opening,
    set,
    ways: ways.filter((way) => way.lost <= mostLost),
  }));
  const before = new Set(all.map(({ ways }) => ways[0]?.content)).size;
  const { kept, least } = chooseFewest(
    allowed.map(({ ways }) => ways.map(({ content, lost }) => ({ content, lost }))),
  );
  const numberOf = numbersBy(all);
  const changes = allowed.flatMap(({ opening, set, ways }) => {
    const way = ways.find((one) => kept.has(one.content));
    return way && way !== ways[0]
      ? [changeOf(opening, way, ways[0], betweenSets(set, numberOf.get(way.content)))]
      : [];
  });
  const after = kept.size;
  return { before, after, least, changes, says: inWords(before, after, least, mostLost) };
}

function inWords(before: number, after: number, least: number, mostLost: number): string {
  const given = `giving up at most ${pointsInWords(mostLost)} points of 100 at an opening`;
  const near = after === least ? 'No fewer are possible.' : `Fewer than ${least} are not possible.`;
  return after === before
    ? `${counted(before, 'set')}; ${given} saves none.`
    : `${before} sets become ${after}, ${given}. ${near}`;
}

/**
 * Openings at a near-tie that follow the majority: where another arrangement is as good as equal and more openings of
 * the building have its set, the twin takes it too.
 */
export function followMajority(all: readonly OpeningWays[]): readonly Change[] {
  const count = new Map<string, number>();
  for (const { ways } of all) add(count, ways[0]?.content ?? '', 1);
  const numberOf = numbersBy(all);
  return all.flatMap(({ opening, set, ways }) => {
    const [best, ...others] = ways;
    const own = count.get(best?.content ?? '') ?? 0;
    const [most] = others
      .filter((way) => way.lost <= nearTieTenths && (count.get(way.content) ?? 0) > own)
      .toSorted((a, b) => (count.get(b.content) ?? 0) - (count.get(a.content) ?? 0) || a.lost - b.lost);
    if (!best || !most) return [];
    const change = changeOf(opening, most, best, betweenSets(set, numberOf.get(most.content)));
    const many = counted(count.get(most.content) ?? 0, 'opening');
    return [{ ...change, says: `${change.says} ${many} of the building have it.` }];
  });
}

function add(into: Map<string, number>, key: string, by: number): void {
  into.set(key, (into.get(key) ?? 0) + by);
}

/** Numbers of the sets that some opening has by its recommendation, by what is in them. */
const numbersBy = (all: readonly OpeningWays[]): ReadonlyMap<string, string> =>
  new Map(all.map(({ set, ways }) => [ways[0]?.content ?? '', set]));

/** " from HS-12 to HS-5"; empty where the set it comes to has no number yet. */
const betweenSets = (from: string, to = '') => (from === '' || to === '' ? '' : ` from ${from} to ${to}`);

function changeOf({ id, mark }: Opening, way: Way, best: Way | undefined, sets: string): Change {
  const name = ({ decision }: Way) =>
    decision.chosen
      ? `${candidateInWords(decision.chosen.candidate)} (${midSentence(releaseInWords(decision.chosen.candidate))})`
      : '';
  const instead = best ? ` instead of ${midSentence(name(best))}` : '';
  return {
    openingId: id,
    mark,
    candidateId: way.candidateId,
    lost: way.lost,
    says: `${mark}${sets}: ${midSentence(name(way))}${instead}; gives up ${pointsInWords(way.lost)} points of 100.`,
  };
}

/** A choice by hand that was taken to need fewer sets begins so; what was given up is its reason. */
const mergeWord = 'Fewer sets.';

/** One time that fewer sets were taken: who, when, and what each opening gave up for it. */
export interface Merge {
  readonly by: string;
  readonly at: string;
  readonly changes: readonly { readonly openingId: string; readonly says: string }[];
}

/** Every merge that still stands, the latest first; it is read from the choices by hand that it left. */
export function mergesOnRecord(project: Project): readonly Merge[] {
  const merges = new Map<string, { by: string; at: string; changes: Merge['changes'][number][] }>();
  for (const { id, override } of openingsInOrder(project)) {
    if (!override?.reason.startsWith(`${mergeWord} `)) continue;
    const { by, at, reason } = override;
    const merge = merges.get(`${at} ${by}`) ?? { by, at, changes: [] };
    merge.changes.push({ openingId: id, says: reason.slice(mergeWord.length + 1) });
    merges.set(`${at} ${by}`, merge);
  }
  return [...merges.values()].toSorted((a, b) => (a.at < b.at ? 1 : a.at > b.at ? -1 : 0));
}

/** "6 openings moved to another set on 2026-11-30 by Estimator." */
export const mergeInWords = ({ by, at, changes }: Merge): string =>
  `${counted(changes.length, 'opening')} moved to another set on ${at.slice(0, 10)}${by === '' ? '' : ` by ${by}`}.`;

/** The changes as choices by hand, which a reviewer signs like any other. */
export function changesAsEdits(changes: readonly Change[], by: string, at: string): readonly Edit[] {
  return changes.map(({ openingId, candidateId, says }) => ({
    kind: 'setOverride',
    id: openingId,
    value: { candidate: candidateId, reason: `${mergeWord} ${says}`, by, at },
  }));
}
