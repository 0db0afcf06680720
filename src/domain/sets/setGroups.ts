import type { Decision } from '../decide/decision.ts';
import { type Opening, openingsInOrder, type Project, type StoredSet } from '../model/project.ts';
import { contentNow, setContent } from '../hardware/content.ts';
import { wholeSignature } from '../hardware/signature.ts';

/**
 * `fixed` stands in every later issue as it is; `revised` keeps its number while all its openings changed alike; `new`
 * came after others were fixed; `notFixed`: none was fixed yet.
 */
export type NumberState = 'fixed' | 'revised' | 'new' | 'notFixed';

export interface SetMember {
  readonly opening: Opening;
  readonly decision: Decision;
}

/** The openings that one number stands for today, alike in what makes a set. */
export interface SetGroup {
  /** What is stored of it; undefined for a set nobody fixed yet. */
  readonly stored: StoredSet | undefined;
  readonly number: string;
  readonly revision: number;
  readonly state: NumberState;
  readonly content: string;
  readonly members: readonly SetMember[];
}

interface Placed extends SetMember {
  readonly content: string;
}

export const naturally = new Intl.Collator('en', { numeric: true });

/**
 * Openings in the sets they were issued in, as long as those hold together; an opening that no longer fits its set goes
 * to one that has what it asks for, and only where there is none to a new number. Nothing here writes to the project.
 */
export function setGroups(project: Project, decisions: ReadonlyMap<string, Decision>): readonly SetGroup[] {
  const placed = openingsInOrder(project).flatMap((opening): Placed[] => {
    const decision = decisions.get(opening.id);
    const content = decision && setContent(decision);
    return decision && content !== undefined ? [{ opening, decision, content }] : [];
  });
  const stored = Object.values(project.hardwareSets).toSorted((a, b) =>
    naturally.compare(a.number, b.number),
  );
  const homes = homesOf(stored, placed);
  const groups: Open[] = [];
  const loose: Placed[] = [];
  for (const set of stored) {
    const mine = homes.get(set) ?? [];
    const content = contentKept(set, mine);
    if (content === undefined) continue;
    groups.push({ stored: set, content, members: mine.filter((one) => one.content === content) });
    loose.push(...mine.filter((one) => one.content !== content));
  }
  const housed = new Set([...homes.values()].flat());
  loose.push(...placed.filter((one) => !housed.has(one)));
  const byContent = new Map<string, Open>();
  for (const group of groups.toReversed()) byContent.set(group.content, group);
  for (const one of inOrder(loose, placed)) {
    const group = byContent.get(one.content) ?? { stored: undefined, content: one.content, members: [] };
    if (!byContent.has(one.content)) groups.push(group);
    byContent.set(one.content, group);
    group.members.push(one);
  }
  return numbered(groups, stored, placed);
}

interface Open {
  readonly stored: StoredSet | undefined;
  readonly content: string;
  readonly members: Placed[];
}

function inOrder(some: readonly Placed[], all: readonly Placed[]): readonly Placed[] {
  const wanted = new Set(some);
  return all.filter((one) => wanted.has(one));
}

/** What a set was made of, while an opening of it still is; otherwise what most of its openings are made of now. */
function contentKept(set: StoredSet, members: readonly Placed[]): string | undefined {
  const before = contentNow(set.content);
  if (members.some((one) => one.content === before)) return before;
  const counts = new Map<string, number>();
  for (const { content } of members) counts.set(content, (counts.get(content) ?? 0) + 1);
  return [...counts].toSorted(([, a], [, b]) => b - a)[0]?.[0];
}

function numbered(
  groups: readonly Open[],
  stored: readonly StoredSet[],
  placed: readonly Placed[],
): readonly SetGroup[] {
  const place = new Map(placed.map((one, index) => [one, index]));
  let highest = 0;
  for (const { number } of stored) highest = Math.max(highest, Number(/(\d+)$/.exec(number)?.[1] ?? 0));
  return groups
    .map((group): SetGroup => {
      const { stored: set, content } = group;
      const members = group.members.toSorted((a, b) => (place.get(a) ?? 0) - (place.get(b) ?? 0));
      if (!set) {
        highest += 1;
        const number = `HS-${String(highest).padStart(2, '0')}`;
        return {
          stored: set,
          number,
          revision: 0,
          state: stored.length > 0 ? 'new' : 'notFixed',
          content,
          members,
        };
      }
      // Of a set that comes from before sets kept their content there is nothing to compare with.
      const changed = set.content !== '' && contentNow(set.content) !== content;
      const revision = set.revision + (changed ? 1 : 0);
      return {
        stored: set,
        number: set.number,
        revision,
        state: changed ? 'revised' : 'fixed',
        content,
        members,
      };
    })
    .toSorted((a, b) => naturally.compare(a.number, b.number));
}

/** In place: a list copied for each that comes grows with the square of a large set. */
function addTo<Key, One>(lists: Map<Key, One[]>, key: Key, one: One): void {
  const list = lists.get(key);
  if (list) list.push(one);
  else lists.set(key, [one]);
}

/** Which stored set each opening belongs to. */
function homesOf(
  stored: readonly StoredSet[],
  placed: readonly Placed[],
): ReadonlyMap<StoredSet, readonly Placed[]> {
  const homes = new Map<StoredSet, Placed[]>();
  const setOf = new Map(stored.flatMap((set) => Object.keys(set.members).map((id) => [id, set] as const)));
  const without: Placed[] = [];
  for (const one of placed) {
    const set = setOf.get(one.opening.id);
    if (set) addTo(homes, set, one);
    else without.push(one);
  }
  const former = stored.filter((set) => set.formerly !== undefined && !homes.has(set));
  if (former.length > 0) for (const [set, list] of adopted(former, without)) homes.set(set, [...list]);
  return homes;
}

/**
 * Sets from before they had openings take those that are made of what they were known by. A rule may have changed since
 * then, so one that finds none takes the openings most like it, if arrangement and leaves are the same.
 */
function adopted(
  former: readonly StoredSet[],
  placed: readonly Placed[],
): ReadonlyMap<StoredSet, readonly Placed[]> {
  const byWhole = new Map<string, Placed[]>();
  for (const one of placed) addTo(byWhole, wholeSignature(one.decision) ?? '', one);
  const taken = new Map<StoredSet, readonly Placed[]>();
  const take = (set: StoredSet, whole: string) => {
    taken.set(set, byWhole.get(whole) ?? []);
    byWhole.delete(whole);
  };
  for (const set of former) if (byWhole.has(set.formerly ?? '')) take(set, set.formerly ?? '');
  const likely = former
    .filter((set) => !taken.has(set))
    .flatMap((set) =>
      [...byWhole.keys()].map((whole) => ({ set, whole, alike: likeness(set.formerly ?? '', whole) })),
    )
    .filter(({ alike }) => alike >= alikeEnough)
    .toSorted((a, b) => b.alike - a.alike);
  for (const { set, whole } of likely) if (!taken.has(set) && byWhole.has(whole)) take(set, whole);
  return taken;
}

/** Half of what either is made of is in both. */
const alikeEnough = 0.5;

/** Share of what two sets are made of that is in both; none where they lock otherwise or one is a pair. */
function likeness(one: string, other: string): number {
  const [a, b] = [one.split('|'), other.split('|')];
  const frame = (words: readonly string[]) =>
    [words[0], ...words.filter((word) => word.startsWith('pair '))].join();
  if (frame(a) !== frame(b)) return 0;
  const both = a.filter((word) => b.includes(word)).length;
  return both / new Set([...a, ...b]).size;
}
