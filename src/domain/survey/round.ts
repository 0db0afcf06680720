import { slotOf } from '../logic/slots.ts';
import { answersTo } from '../decide/answers.ts';
import { decide, firstFacts } from '../decide/decide.ts';
import type { Decision } from '../decide/decision.ts';
import { answered, nextToSettle, openQuestions, outcome, wasAsked } from '../decide/whatMatters.ts';
import { factAt, factEntries, type AnyFact } from '../model/fact.ts';
import { type FactKey, valueEntries } from '../model/fields.ts';
import type { Opening, Project } from '../model/project.ts';
import { missingForOrder } from '../sets/forOrder.ts';
import { factsOfLook, type Look, type Preset } from './look.ts';
import { looks } from './looks.ts';
import { isRelevant } from './relevance.ts';
import { type Station, stationOf, stationOrder, stations } from './stations.ts';
import { usualLooks } from './usual.ts';

/** What is asked next: several facts by one look, or one fact. */
export type Ask =
  | { readonly kind: 'look'; readonly look: Look; readonly presets: readonly Preset[] }
  | { readonly kind: 'fact'; readonly key: FactKey };

/** Where on the way round the door the surveyor stands, and what is asked there. */
export interface Stop {
  readonly station: Station;
  readonly ask: Ask;
  /** This question among those of its station, the answered ones counted. */
  readonly number: number;
  readonly ofStation: number;
  /** Questions left at this door as far as can be told now, this one counted. */
  readonly toGo: number;
}

/** Looks that somebody refused at this door: its questions are asked one by one. */
export type Refused = ReadonlySet<string>;
const nothingRefused: Refused = new Set();

/**
 * The next question on one way round the door: station by station, and at each first what decides. Undefined once
 * nothing that was not asked can change the decision or its order.
 */
export function nextStop(
  project: Project,
  opening: Opening,
  decision: Decision,
  refused: Refused = nothingRefused,
): Stop | undefined {
  if (decision.state === 'refused') return undefined;
  const asks = asksLeft(project, opening, decision, refused);
  const ask = asks[0];
  if (!ask) return undefined;
  const station = stationOfAsk(ask);
  const left = asks.filter((one) => stationOfAsk(one) === station).length;
  const done = answersAt(station, opening, refused, project);
  return { station, ask, number: done + 1, ofStation: done + left, toGo: asks.length };
}

function asksLeft(project: Project, opening: Opening, decision: Decision, refused: Refused): readonly Ask[] {
  const needed = neededFacts(project, opening, decision);
  const asks = asksFor(project, opening, decision, needed, refused);
  const counts = changes(project, opening, decision);
  // Only what is asked next is held against every answer: what comes later may have been settled until then.
  const at = asks.findIndex((one) => factsOfAsk(one).some((key) => needed.sure.has(key) || counts(key)));
  if (at >= 0) return asks.slice(at);
  // Nothing decides any more: what the order waits for.
  const isNew = (key: FactKey) => !wasAsked(project, opening, key);
  const forOrder = missingForOrder(project, opening, decision).filter(isNew);
  // What seldom makes sense is still asked where it is the last thing in doubt, unless somebody could not tell before:
  // then each answer would raise another doubt, and the opening goes onto the list of those to come back to.
  const couldTell = Object.values(opening.facts).every((fact) => fact.is !== 'unknown');
  const last = forOrder.length === 0 && couldTell ? nextToSettle(project, opening, decision) : undefined;
  const facts = last ? [last] : forOrder;
  return asksFor(project, opening, decision, { facts, sure: new Set(facts) }, refused);
}

function factsOfAsk(ask: Ask): readonly FactKey[] {
  return ask.kind === 'look' ? factsOfLook(ask) : [ask.key];
}

function stationOfAsk(ask: Ask): Station {
  return ask.kind === 'look' ? ask.look.station : stationOf(ask.key);
}

/** "Edge and label, 2 of 3; 7 to go". */
export function progressInWords({ station, ask, number, ofStation, toGo }: Stop): string {
  // Before anybody said what is wanted, nobody can say how much there is to ask.
  if (ask.kind === 'look' && ask.look.lead === 'control') return stations[station];
  return `${stations[station]}, ${number} of ${ofStation}; ${toGo} to go`;
}

/** How often somebody looked at a station of this door: a look counts once, whatever it told. */
function answersAt(station: Station, { facts }: Opening, refused: Refused, project: Project): number {
  const counted = new Set<FactKey>();
  let count = 0;
  for (const look of allLooks(project)) {
    if (look.station !== station || refused.has(look.id)) continue;
    const told = factsOfLook(look).filter((key) => facts[key]?.is === 'known' && !counted.has(key));
    if (told.length < 2 && look.id !== 'wanted') continue;
    if (told.length === 0) continue;
    count++;
    for (const key of told) counted.add(key);
  }
  const alone = factEntries(facts).filter(([key]) => !counted.has(key));
  return count + alone.filter(([key]) => stationOf(key) === station).length;
}

const askedOfEachDoor = [
  'readerSides',
  'wishScheduledUnlock',
  'wishLockdown',
  'wishDelayedEgress',
  'wishControlledEgress',
] as const satisfies readonly FactKey[];

/** What an owner wishes, where nobody asked yet: not asked is not "no". */
function wishesToAsk(project: Project, opening: Opening, decision: Decision): readonly FactKey[] {
  const said = (key: FactKey) => opening.facts[key] !== undefined || project.building[key] !== undefined;
  const about = opening.facts;
  if (about.control === undefined && about.readerSides === undefined) return ['control'];
  if (about.control?.is !== 'known' || about.control.value !== 'controlled') return [];
  return askedOfEachDoor.filter(
    (key) => !said(key) && isRelevant(key, decision.slots, decision.basis, false),
  );
}

interface Needed {
  /** What may count and was not asked, what decides first. */
  readonly facts: readonly FactKey[];
  /** Those that count whatever else is answered. */
  readonly sure: ReadonlySet<FactKey>;
}

function neededFacts(project: Project, opening: Opening, decision: Decision): Needed {
  const isNew = (key: FactKey) => !wasAsked(project, opening, key);
  const wishes = wishesToAsk(project, opening, decision);
  if (wishes[0] === 'control') return { facts: wishes, sure: new Set(wishes) };
  const unknown = (key: FactKey) => decision.slots[slotOf(key)] === undefined;
  const fits = (key: FactKey) =>
    isNew(key) && isRelevant(key, decision.slots, decision.basis, opening.facts[key] !== undefined);
  const { deciding, signing } = openQuestions(decision);
  const first =
    !decision.chosen && deciding.size > 0 ? firstFacts.filter((key) => isNew(key) && unknown(key)) : [];
  const waiting = [deciding, signing].flatMap((found) =>
    [...found].toSorted((a, b) => b[1] - a[1]).map(([key]) => key),
  );
  const open = [...new Set(waiting)].filter((key) => !first.some((one) => one === key) && fits(key));
  return { facts: [...new Set([...wishes, ...first, ...open])], sure: new Set([...wishes, ...first]) };
}

/** Whether an answer to a fact would change what stands, or leave less open. */
function changes(project: Project, opening: Opening, decision: Decision): (key: FactKey) => boolean {
  const before = outcome(decision);
  const waits = (one: Decision) => {
    const { deciding, signing } = openQuestions(one);
    return deciding.size + signing.size;
  };
  const waiting = waits(decision);
  return (key) => {
    if (wasAsked(project, opening, key) || decision.slots[slotOf(key)] !== undefined) return false;
    const told = answersTo(key).map((value) => decide(...answered(project, opening, key, value)));
    return told.some((after) => outcome(after) !== before) || told.some((after) => waits(after) < waiting);
  };
}

function allLooks(project: Project): readonly Look[] {
  return [...usualLooks(project), ...looks];
}

/** The facts that are needed as questions, in the order of the way round the door. */
function asksFor(
  project: Project,
  opening: Opening,
  decision: Decision,
  needed: Needed,
  refused: Refused,
): readonly Ask[] {
  const left = new Set(needed.facts);
  const asks: Ask[] = [];
  for (const look of allLooks(project)) {
    // Of a door that is left alone one thing is asked: what locks it, with every answer there is.
    if (refused.has(look.id) || decision.state === 'left') continue;
    const told = factsOfLook(look).filter((key) => left.has(key));
    if (told.length === 0 || (look.lead && !left.has(look.lead))) continue;
    const presets = look.presets.filter((preset) => isOpen(preset, opening, decision));
    const asked = factsOfLook({ presets }).filter((key) => opening.facts[key] === undefined);
    // One question alone is asked as one, with all its answers.
    if (presets.length === 0 || (asked.length < 2 && look.id !== 'wanted')) continue;
    asks.push({ kind: 'look', look, presets });
    for (const key of asked) left.delete(key);
  }
  for (const key of left) asks.push({ kind: 'fact', key });
  const place = (ask: Ask) => stationOrder.indexOf(stationOfAsk(ask));
  return asks.toSorted((a, b) => place(a) - place(b));
}

/** Nothing of it says otherwise than what is known at this opening or of the whole building. */
function isOpen({ facts }: Preset, opening: Opening, decision: Decision): boolean {
  return valueEntries(facts).every(([key, value]) => {
    const here = factAt(opening.facts, key);
    if (here?.is === 'unknown') return true;
    if (here) return here.value === value;
    const elsewhere = decision.assumed.has(key) ? undefined : decision.slots[slotOf(key)];
    return elsewhere === undefined || elsewhere === value;
  });
}

/** What an answer to a look writes: facts that stand here already are left. */
export function factsToWrite(
  preset: Preset,
  opening: Opening,
): readonly { readonly key: FactKey; readonly fact: AnyFact }[] {
  return valueEntries(preset.facts).flatMap(([key, value]) =>
    opening.facts[key] === undefined || opening.facts[key]?.is === 'assumed'
      ? [{ key, fact: { is: 'known', value } as const }]
      : [],
  );
}
