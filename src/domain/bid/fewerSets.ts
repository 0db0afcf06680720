import type { Edit } from '../commands/command.ts';
import type { Decision } from '../decide/decision.ts';
import { candidateInWords, pointsInWords, releaseInWords } from '../decide/words.ts';
import { nearTieTenths } from '../decide/score.ts';
import { openingsInOrder, type Opening, type Project } from '../model/project.ts';
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
  /** "409: battery-powered lock instead of …; gives up 1.4 points of 100." */
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
  readonly ways: readonly Way[];
}

/** The ways of every opening that has a set, to be worked out once and asked for several allowances. */
export function allWays(
  project: Project,
  decisions: ReadonlyMap<string, Decision>,
  mostLost: number,
): readonly OpeningWays[] {
  return openingsInOrder(project).flatMap((opening) => {
    const decision = decisions.get(opening.id);
    const ways = decision ? waysOf(project, opening, decision, mostLost) : [];
    return ways.length === 0 ? [] : [{ opening, ways }];
  });
}

/** The fewest sets found when each opening may give up so much of its score, with what each merge gives up. */
export function fewerSets(all: readonly OpeningWays[], mostLost: number): FewerSets {
  const allowed = all.map(({ opening, ways }) => ({
    opening,
    ways: ways.filter((way) => way.lost <= mostLost),
  }));
  const before = new Set(all.map(({ ways }) => ways[0]?.content)).size;
  const { kept, least } = chooseFewest(
    allowed.map(({ ways }) => ways.map(({ content, lost }) => ({ content, lost }))),
  );
  const changes = allowed.flatMap(({ opening, ways }) => {
    const way = ways.find((one) => kept.has(one.content));
    return way && way !== ways[0] ? [changeOf(opening, way, ways[0])] : [];
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
  return all.flatMap(({ opening, ways }) => {
    const [best, ...others] = ways;
    const own = count.get(best?.content ?? '') ?? 0;
    const [most] = others
      .filter((way) => way.lost <= nearTieTenths && (count.get(way.content) ?? 0) > own)
      .toSorted((a, b) => (count.get(b.content) ?? 0) - (count.get(a.content) ?? 0) || a.lost - b.lost);
    if (!best || !most) return [];
    const change = changeOf(opening, most, best);
    const many = counted(count.get(most.content) ?? 0, 'opening');
    return [{ ...change, says: `${change.says} ${many} of the building have it.` }];
  });
}

function add(into: Map<string, number>, key: string, by: number): void {
  into.set(key, (into.get(key) ?? 0) + by);
}

function changeOf({ id, mark }: Opening, way: Way, best: Way | undefined): Change {
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
    says: `${mark}: ${midSentence(name(way))}${instead}; gives up ${pointsInWords(way.lost)} points of 100.`,
  };
}

/** The changes as choices by hand, which a reviewer signs like any other. */
export function changesAsEdits(changes: readonly Change[], by: string, at: string): readonly Edit[] {
  return changes.map(({ openingId, candidateId, says }) => ({
    kind: 'setOverride',
    id: openingId,
    value: { candidate: candidateId, reason: `Fewer sets. ${says}`, by, at },
  }));
}
