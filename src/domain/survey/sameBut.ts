import { factAt, type AnyFact } from '../model/fact.ts';
import { type FactKey, type AnyValue } from '../model/fields.ts';
import type { Opening, Project } from '../model/project.ts';
import { startSentence } from '../text/midSentence.ts';
import { sayFact } from './sayFact.ts';
import { standardTemplates } from './standardTemplates.ts';
import { likeOpening } from './takeOver.ts';

interface Part {
  readonly name: string;
  readonly keys: readonly FactKey[];
}

/**
 * What a surveyor says after "same as 2-03, but", each as one thing that is seen at once. Where nothing is known of
 * other doors they come in this order: common practice, no source.
 */
const parts: readonly Part[] = [
  { name: 'Size', keys: ['leafWidthIn', 'leafHeightIn'] },
  { name: 'Hand', keys: ['handing'] },
  { name: 'Label', keys: ['fireLabel', 'fireRatingMin', 'frameLabelMin'] },
  { name: 'Reader', keys: ['readerSides'] },
  // Together, because a lever and a bar are found locked in different ways.
  { name: 'Lock', keys: ['latch', 'lockFunction', 'existingArrangement', 'panicPresent'] },
  { name: 'Closer', keys: ['closing', 'operator', 'holdOpen'] },
  { name: 'Room', keys: ['roomUse', 'egressRole', 'publicEntrance'] },
  { name: 'Wall', keys: ['wallKind', 'wallRatingMin'] },
  { name: 'Leaf and frame', keys: ['leafMaterial', 'frameMaterial'] },
  { name: 'Hours and lockdown', keys: ['wishScheduledUnlock', 'wishLockdown'] },
  { name: 'Strike', keys: ['strikePrep', 'latchProjectionIn'] },
];

/** More lines are no shorter than a survey. */
const mostLines = 4;
const mostOthers = 3;
/** Fewer doors of the same kind tell little of what varies among them. */
const fewKin = 2;

interface Told {
  readonly key: FactKey;
  readonly value: AnyValue;
}

export interface OtherWay {
  readonly says: string;
  readonly facts: readonly { readonly key: FactKey; readonly fact: AnyFact }[];
}

export interface ButLine {
  readonly name: string;
  readonly keys: readonly FactKey[];
  /** What stands at the new door now. */
  readonly says: string;
  /** True once somebody answered it at this door. */
  readonly seen: boolean;
  /** What doors like it have instead, most frequent first. */
  readonly others: readonly OtherWay[];
}

function told({ facts }: Pick<Opening, 'facts'>, keys: readonly FactKey[]): readonly Told[] {
  return keys.flatMap((key) => {
    const fact = factAt(facts, key);
    return fact && fact.is !== 'unknown' ? [{ key, value: fact.value }] : [];
  });
}

const valueOf = (said: readonly Told[], of: FactKey) => said.find(({ key }) => key === of)?.value;

/** Both say something of it, and not the same. */
function differs(a: readonly Told[], b: readonly Told[]): boolean {
  return a.some(({ key, value }) => {
    const there = valueOf(b, key);
    return there !== undefined && there !== value;
  });
}

function inWords(said: readonly Told[]): string {
  return startSentence(said.map(({ key, value }) => sayFact(key, value)).join('; '));
}

/** Doors of the same kind: leaf and the way it opens; where they are few, all that open alike. */
function kinOf(project: Project, like: Opening): readonly Opening[] {
  const others = Object.values(project.openings).filter((one) => one.id !== like.id);
  const alike = (...keys: FactKey[]) =>
    others.filter((one) => {
      const there = told(one, keys);
      return told(like, keys).every(({ key, value }) => valueOf(there, key) === value);
    });
  const kin = alike('doorType', 'leafMaterial');
  return kin.length >= fewKin ? kin : alike('doorType');
}

/** At most four things that doors like this one differ in most often, of what is stated at it. */
export function differsMost(project: Project, like: Opening): readonly Part[] {
  const kin = kinOf(project, like);
  const counts = new Map(
    parts.map((part) => {
      const here = told(like, part.keys);
      return [part, kin.filter((one) => differs(here, told(one, part.keys))).length] as const;
    }),
  );
  return parts
    .filter(({ keys }) => told(like, keys).length > 0)
    .toSorted((a, b) => (counts.get(b) ?? 0) - (counts.get(a) ?? 0))
    .slice(0, mostLines);
}

/**
 * What doors of the same kind have instead: all that one of them has otherwise, so that it is never half of one door and
 * half of another. What is the same as here is neither said nor written.
 */
function othersOf(
  kin: readonly Opening[],
  here: readonly Told[],
  keys: readonly FactKey[],
): readonly OtherWay[] {
  const found = new Map<string, { readonly said: readonly Told[]; readonly count: number }>();
  for (const one of kin) {
    const said = told(one, keys);
    const whole = here.every(({ key }) => valueOf(said, key) !== undefined);
    if (!whole || !differs(here, said)) continue;
    const otherwise = said.filter(({ key, value }) => valueOf(here, key) !== value);
    const id = JSON.stringify(otherwise);
    found.set(id, { said: otherwise, count: (found.get(id)?.count ?? 0) + 1 });
  }
  return [...found.values()]
    .toSorted((a, b) => b.count - a.count)
    .slice(0, mostOthers)
    .map(({ said }) => ({
      says: inWords(said),
      facts: said.map(({ key, value }) => ({ key, fact: { is: 'known', value } })),
    }));
}

/** The opening this one was taken over from, as far as anything of it is still assumed here. */
export function templateOf(project: Project, opening: Opening): Opening | undefined {
  const counts = new Map<string, number>();
  for (const fact of Object.values(opening.facts))
    if (fact.is === 'assumed') counts.set(fact.from, (counts.get(fact.from) ?? 0) + 1);
  return [...Object.values(project.openings), ...standardTemplates(project)]
    .filter((one) => one.id !== opening.id && counts.has(likeOpening(one.mark)))
    .toSorted((a, b) => (counts.get(likeOpening(b.mark)) ?? 0) - (counts.get(likeOpening(a.mark)) ?? 0))[0];
}

/** "Same as 2-03, but …": what to look at first at a door that was taken over from another. */
export function butLines(project: Project, like: Opening, opening: Opening): readonly ButLine[] {
  const kin = [like, ...kinOf(project, like)].filter((one) => one.id !== opening.id);
  // What is answered here must not change what is asked: the door itself counts for nothing.
  const { [opening.id]: _self, ...others } = project.openings;
  return differsMost({ ...project, openings: others }, like).map(({ name, keys }) => {
    const here = told(opening, keys);
    const asThere = told(like, keys);
    return {
      name,
      keys,
      says: here.length === 0 ? sameButWords.open : inWords(here),
      seen: keys.some((key) => opening.facts[key]?.is === 'known'),
      others: othersOf(kin, here.length === 0 ? asThere : here, keys),
    };
  });
}

export const sameButWords = {
  title: (mark: string) => `Same as ${mark}, but …`,
  look: 'Doors like it differ in these most often. Answer only what is different here.',
  seen: 'seen here',
  open: 'Not answered',
  different: (name: string) => `${name}: something else`,
  done: (name: string) => `${name}: done`,
  instead: (name: string, says: string) => `${name}: ${says}`,
} as const;
