import { type ItemId, items, trades } from '../devices/items.ts';
import { type Counting, countingOf } from '../decide/counting.ts';
import type { Decision } from '../decide/decision.ts';
import { valueIn } from '../decide/factView.ts';
import { type Part, partsOf } from '../decide/parts.ts';
import { candidateInWords, failModeWords, releaseInWords } from '../decide/words.ts';
import { valueInWords } from '../text/format.ts';
import { openingsInOrder, type Project } from '../model/project.ts';
import { slotOf } from '../logic/compile.ts';
import { powerPlan } from '../power/powerPlan.ts';
import { type OrderState, orderState } from './forOrder.ts';
import { acrossMembers, detailOf, type Member } from './setLines.ts';
import { isHanded, setSignature } from './signature.ts';
import { type SiteWork, siteWork } from './siteWork.ts';

/** Set numbers by signature. What was once numbered keeps its number, also while no opening uses it. */
export type SetNumbers = ReadonlyMap<string, string>;

export interface SetLine {
  readonly item: ItemId;
  readonly name: string;
  /** What has to be known to order it: arrangement, hand, latch, voltage. Empty where the name says all. */
  readonly detail: string;
  readonly standard: string;
  readonly trade: string;
  /** Only a line that is bought is priced here, piece by piece. */
  readonly counting: Counting;
  /** Pieces for one opening. */
  readonly each: number;
  /** Pieces for all openings of the set. */
  readonly total: number;
  /** Rules that ask for it; empty for what the arrangement itself consists of. */
  readonly ruleIds: readonly string[];
}

/** Fixed numbers stand in every later issue; a new one was given after others were fixed, or none was yet. */
export type NumberState = 'fixed' | 'new' | 'notFixed';

export interface HardwareSet {
  readonly id: string;
  readonly numberState: NumberState;
  readonly signature: string;
  /** "Electric strike for a mortise latch, fail secure". */
  readonly title: string;
  readonly device: string;
  readonly failMode: string;
  readonly release: string;
  readonly label: string;
  readonly leaves: string;
  /** Empty when nothing in the set is left or right. */
  readonly handing: string;
  /** New or existing openings, each with its marks where they differ. */
  readonly work: string;
  readonly lines: readonly SetLine[];
  readonly siteWork: readonly SiteWork[];
  readonly openings: readonly { readonly id: string; readonly mark: string; readonly order: OrderState }[];
}

const pairSlot = slotOf('isPair');

/**
 * Numbers in order of first appearance. Those given before are kept, and a number once given is never given to
 * another set: bidders hold papers with the old one.
 */
export function assignSets(signatures: Iterable<string>, previous?: SetNumbers): SetNumbers {
  const numbers = new Map(previous ?? []);
  let highest = 0;
  for (const id of numbers.values()) highest = Math.max(highest, Number(/(\d+)$/.exec(id)?.[1] ?? 0));
  for (const signature of signatures) {
    if (numbers.has(signature)) continue;
    highest += 1;
    numbers.set(signature, `HS-${String(highest).padStart(2, '0')}`);
  }
  return numbers;
}

/** The numbers the project keeps from earlier issues. */
export function keptNumbers({ setNumbers }: Project): SetNumbers {
  return new Map(Object.entries(setNumbers));
}

/** The sets in use, by number. */
export function hardwareSets(
  project: Project,
  decisions: ReadonlyMap<string, Decision>,
): readonly HardwareSet[] {
  const groups = new Map<string, Group>();
  const fed = powerPlan(project, decisions).byId;
  for (const opening of openingsInOrder(project)) {
    const decision = decisions.get(opening.id);
    const signature = decision && setSignature(decision);
    if (!decision || signature === undefined) continue;
    const group = groups.get(signature) ?? { decision, openings: [], members: [], parts: [] };
    groups.set(signature, group);
    group.openings.push({
      id: opening.id,
      mark: opening.mark,
      order: orderState(project, opening, decision),
    });
    group.members.push({ mark: opening.mark, decision, fed: fed.get(opening.id) });
    group.parts.push(partsOf(decision));
  }
  const kept = keptNumbers(project);
  const numbers = assignSets(groups.keys(), kept);
  const stateOf = (signature: string): NumberState =>
    kept.has(signature) ? 'fixed' : kept.size > 0 ? 'new' : 'notFixed';
  return [...groups]
    .map(([signature, group]) => ({
      ...oneSet(numbers.get(signature) ?? '', signature, group),
      numberState: stateOf(signature),
    }))
    .toSorted((a, b) => natural.compare(a.id, b.id));
}
interface Group {
  readonly decision: Decision;
  readonly openings: HardwareSet['openings'][number][];
  readonly members: Member[];
  readonly parts: (readonly Part[])[];
}
const natural = new Intl.Collator('en', { numeric: true });

function oneSet(id: string, signature: string, group: Group): Omit<HardwareSet, 'numberState'> {
  const { openings, members, parts } = group;
  const { chosen, slots } = group.decision;
  const candidate = chosen?.candidate;
  const [first = []] = parts;
  const minutes = valueIn(slots, 'fireRatingMin');
  return {
    id,
    signature,
    title: candidate ? candidateInWords(candidate) : '',
    device: candidate?.device.name ?? '',
    failMode: candidate ? failModeWords[candidate.failMode] : '',
    release: candidate ? releaseInWords(candidate) : '',
    label: minutes === 0 ? 'None' : valueInWords('fireRatingMin', minutes),
    leaves: slots[pairSlot] === undefined ? 'not surveyed' : slots[pairSlot] === true ? 'Pair' : 'Single',
    handing: isHanded(first, group.decision) ? valueInWords('handing', valueIn(slots, 'handing')) : '',
    work: acrossMembers('workStatus', members),
    lines: first.map((part) => lineOf(part, first, group, slots[pairSlot] === true ? 2 : 1)),
    siteWork: siteWork(members),
    openings,
  };
}

function lineOf(part: Part, all: readonly Part[], group: Group, leaves: number): SetLine {
  const { item, quantity } = part;
  const { members, parts } = group;
  const counting = countingOf(part, all, leaves);
  return {
    item,
    name: items[item].name,
    // What another line stands for is ordered as that line says, and what stays is not ordered.
    detail: counting === 'included' || counting === 'kept' ? '' : detailOf(item, members),
    standard: standardOf(item),
    trade: trades[items[item].trade],
    counting,
    each: quantity,
    total: quantity * members.length,
    ruleIds: rulesBehind(item, parts),
  };
}

export function standardOf(item: ItemId): string {
  const found = items[item];
  return 'standard' in found ? found.standard : '';
}

/** Openings of one set can need the same item for different reasons. */
function rulesBehind(item: ItemId, parts: readonly (readonly Part[])[]): readonly string[] {
  const found = new Set<string>();
  for (const list of parts) {
    for (const part of list) if (part.item === item && part.ruleId !== undefined) found.add(part.ruleId);
  }
  return [...found].toSorted(natural.compare);
}
