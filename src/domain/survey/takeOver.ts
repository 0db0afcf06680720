import { type Facts, factAt, type AnyFact } from '../model/fact.ts';
import { counted } from '../text/counted.ts';
import type { FieldGroup } from '../model/field.ts';
import { type FactKey, fieldInfo, openingFactKeys } from '../model/fields.ts';
import { newOpening } from '../model/newProject.ts';
import { startSentence } from '../text/midSentence.ts';
import { sayFact } from './sayFact.ts';
import { stationOf, stationOrder, stations } from './stations.ts';
import type { Opening } from '../model/project.ts';

/** Where a copied fact says it came from. */
export function likeOpening(mark: string): string {
  return `same as ${mark}`;
}

/** One fact of another opening as it stands after it was taken over: nobody has seen it here yet. */
function taken(fact: AnyFact, mark: string): AnyFact | undefined {
  if (fact.is === 'unknown') return undefined;
  return { is: 'assumed', value: fact.value, from: likeOpening(mark) };
}

/** All facts of an opening for a new one beside it. They are assumed until somebody confirms them at the door. */
export function factsLike(like: Pick<Opening, 'mark' | 'facts'>): Facts {
  const facts: Record<string, AnyFact> = {};
  for (const key of openingFactKeys) {
    const fact = factAt(like.facts, key);
    const copy = fact && taken(fact, like.mark);
    if (copy) facts[key] = copy;
  }
  return facts;
}

/** A new opening with all facts of another one, on its floor and reached from the same space. */
export function openingLike(id: string, mark: string, like: Opening): Opening {
  return {
    ...newOpening(id, mark),
    facts: factsLike(like),
    floorId: like.floorId,
    fromSpaceId: like.fromSpaceId,
  };
}

/** A new opening without facts. Whoever walks from one opening to the next is still on its floor. */
export function emptyBeside(id: string, mark: string, near?: Pick<Opening, 'floorId'>): Opening {
  return { ...newOpening(id, mark), floorId: near?.floorId ?? null };
}

export interface TakeOver {
  readonly groups?: ReadonlySet<FieldGroup>;
  readonly facts?: ReadonlySet<FactKey>;
  /** Also facts that are already known here. */
  readonly replace: boolean;
}

/** What taking over facts would write, fact by fact; nothing that already stands here with the same value. */
export function takenOver(
  from: Opening,
  to: Opening,
  what: TakeOver,
): readonly { readonly key: FactKey; readonly fact: AnyFact }[] {
  return openingFactKeys.flatMap((key) => {
    if (!(what.groups?.has(fieldInfo(key).group) ?? what.facts?.has(key))) return [];
    const here = factAt(to.facts, key);
    if (here?.is === 'known' && !what.replace) return [];
    const there = factAt(from.facts, key);
    const fact = there && taken(there, from.mark);
    if (!fact || (here && here.is !== 'unknown' && fact.is !== 'unknown' && here.value === fact.value))
      return [];
    return [{ key, fact }];
  });
}

/** Groups in which the other opening has anything to give. */
export function groupsToTake(from: Opening): ReadonlySet<FieldGroup> {
  return new Set(
    openingFactKeys
      .filter((key) => {
        const fact = from.facts[key];
        return fact !== undefined && fact.is !== 'unknown';
      })
      .map((key) => fieldInfo(key).group),
  );
}

export function takeOverInWords(count: number, mark: string): string {
  if (count === 0) return `Nothing to copy: these facts are already the same as at ${mark}.`;
  return `${counted(count, 'fact')} will be assumed here, “${likeOpening(mark)}”, until someone confirms them at the door.`;
}

export function takenOverInWords(count: number, mark: string): string {
  return `${counted(count, 'fact was', 'facts were')} copied from ${mark}. Undo removes them.`;
}

/** Said where a new opening is begun as a copy. */
export const sameAsInWords = 'Copied facts are assumed until you confirm them at the door.';

export const confirmWords = {
  look: (count: number) =>
    `Look at the door: ${counted(count, 'fact is', 'facts are')} taken over. Correct what differs.`,
  confirm: 'All of it is so here',
  apart: 'Label and preparation: looked at here?',
  confirmApart: 'Looked at: the same here',
} as const;

/** What was taken over, a line for each station of the door, so that all of it is read before it is confirmed. */
export function linesToConfirm(
  facts: readonly { readonly key: FactKey; readonly fact: AnyFact }[],
): readonly { readonly name: string; readonly says: string }[] {
  return stationOrder.flatMap((station) => {
    const here = facts.filter(({ key }) => stationOf(key) === station);
    const said = here.map(({ key, fact }) => (fact.is === 'unknown' ? '' : sayFact(key, fact.value)));
    return said.length === 0 ? [] : [{ name: stations[station], says: startSentence(`${said.join('; ')}.`) }];
  });
}
