import { type ItemId, itemOf, items, setSteps, trades } from '../devices/items.ts';
import { type Counting, countingOf } from '../hardware/counting.ts';
import type { Decision } from '../decide/decision.ts';
import { leavesOf } from '../hardware/inPlace.ts';
import { type Part, partsOf } from '../hardware/parts.ts';
import { candidateInWords, failModeWords, releaseInWords } from '../words/arrangement.ts';
import type { Project } from '../model/project.ts';
import { slotOf } from '../logic/slots.ts';
import { type FedOpening, powerPlan } from '../power/powerPlan.ts';
import { type OrderState, orderState } from './forOrder.ts';
import { type ItemTerms, itemTerms } from '../hardware/itemTerms.ts';
import { labelInWords } from '../words/openingWords.ts';
import { type NumberState, type SetGroup, setGroups, type SetMember } from './setGroups.ts';
import { acrossMembers, acrossWords, detailOf, type Member } from './setLines.ts';
import { isHanded } from '../hardware/signature.ts';
import { type SetCondition, setConditions } from './setConditions.ts';
import { type SiteWork, siteWork } from './siteWork.ts';

/** Goods are bought, work is done at the opening, a duty comes again for as long as it stands. */
export const blocks = {
  goods: 'Goods',
  work: 'Work',
  duty: 'Recurring duties',
  condition: 'Conditions of approval',
} as const;
export type Block = keyof typeof blocks;

export interface SetLine {
  readonly item: ItemId;
  readonly block: Block;
  readonly name: string;
  /** What has to be known to order it: arrangement, hand, latch, voltage. Empty where the name says all. */
  readonly detail: string;
  readonly standard: string;
  readonly trade: string;
  readonly terms: ItemTerms;
  /** How it counts where it counts most: bought at one opening, it is a line to be priced. */
  readonly counting: Counting;
  /** Pieces for one opening that has the line; null where its openings differ. */
  readonly each: number | null;
  /** Pieces bought for all openings of the set; nothing for what is asked of another line or shared. */
  readonly total: number;
  /** Pieces seen in place that stay. */
  readonly kept: number;
  /** Openings that have the line, where not all of the set do. */
  readonly marks: readonly string[];
  /** Rules that ask for it; empty for what the arrangement itself consists of. */
  readonly ruleIds: readonly string[];
}

export interface HardwareSet {
  /** Its number. */
  readonly id: string;
  /** Id of the stored set; empty while nobody fixed its number. */
  readonly storedId: string;
  readonly numberState: NumberState;
  readonly revision: number;
  readonly content: string;
  /** "Electric strike for a mortise latch, fail secure", or the name somebody gave it. */
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
  /** Under what conditions its openings were approved. */
  readonly conditions: readonly SetCondition[];
  readonly openings: readonly { readonly id: string; readonly mark: string; readonly order: OrderState }[];
}

const pairSlot = slotOf('isPair');

/** The sets in use, by number. */
export function hardwareSets(
  project: Project,
  decisions: ReadonlyMap<string, Decision>,
): readonly HardwareSet[] {
  const { byId } = powerPlan(project, decisions);
  return setGroups(project, decisions).map((group) => oneSet(project, group, byId));
}

/** The number under which each opening stands, by opening id. */
export type SetNumbers = ReadonlyMap<string, string>;

export function setNumbersOf(project: Project, decisions: ReadonlyMap<string, Decision>): SetNumbers {
  return new Map(
    setGroups(project, decisions).flatMap(({ number, members }) =>
      members.map(({ opening }) => [opening.id, number] as const),
    ),
  );
}

/** "HS-10 revision 1"; a set that was never revised says its number only. */
export function setInWords({ id, revision }: Pick<HardwareSet, 'id' | 'revision'>): string {
  return revision === 0 ? id : `${id} revision ${revision}`;
}

type Feeds = ReadonlyMap<string, FedOpening>;

function oneSet(project: Project, group: SetGroup, feeds: Feeds): HardwareSet {
  const [first] = group.members;
  const members = group.members.map(({ opening, decision }) => ({
    mark: opening.mark,
    decision,
    fed: feeds.get(opening.id),
  }));
  const candidate = first?.decision.chosen?.candidate;
  const pair = first?.decision.slots[pairSlot];
  const handed = members.filter(({ decision }) => isHanded(partsOf(decision), decision));
  return {
    id: group.number,
    storedId: group.stored?.id ?? '',
    numberState: group.state,
    revision: group.revision,
    content: group.content,
    title: group.stored?.name || (candidate ? candidateInWords(candidate) : ''),
    device: candidate?.device.name ?? '',
    failMode: candidate ? failModeWords[candidate.failMode] : '',
    release: candidate ? releaseInWords(candidate) : '',
    label: acrossWords(members, ({ decision }) => labelInWords(decision) || 'not surveyed'),
    leaves: pair === undefined ? 'not surveyed' : pair === true ? 'Pair' : 'Single',
    handing: handed.length === 0 ? '' : acrossMembers('handing', handed),
    work: acrossMembers('workStatus', members),
    lines: linesOf(project, group.members, feeds),
    siteWork: siteWork(members),
    conditions: setConditions(project, group.members),
    openings: group.members.map(({ opening, decision }) => ({
      id: opening.id,
      mark: opening.mark,
      order: orderState(project, opening, decision),
    })),
  };
}

interface Counted {
  readonly part: Part;
  readonly counting: Counting;
  readonly member: Member;
}

/** One line for each item that any opening of the set has, in the order in which a set is listed. */
function linesOf(project: Project, members: readonly SetMember[], feeds: Feeds): readonly SetLine[] {
  const byItem = new Map<ItemId, Counted[]>();
  for (const { opening, decision } of members) {
    const parts = partsOf(decision);
    const leaves = leavesOf(decision);
    for (const part of parts) {
      const counted = {
        part,
        counting: countingOf(part, parts, leaves),
        member: { mark: opening.mark, decision, fed: feeds.get(opening.id) },
      };
      byItem.set(part.item, [...(byItem.get(part.item) ?? []), counted]);
    }
  }
  const order = listingOrder(members);
  return [...byItem]
    .map(([item, all]) => lineOf(project, item, all, members.length))
    .toSorted(
      (a, b) =>
        blockOrder.indexOf(a.block) - blockOrder.indexOf(b.block) ||
        order.indexOf(a.item) - order.indexOf(b.item),
    );
}
const blockOrder = Object.keys(blocks);

/** The order of the opening that has most lines; what it lacks follows in the step it belongs to. */
function listingOrder(members: readonly SetMember[]): readonly ItemId[] {
  const all = members.map(({ decision }) => partsOf(decision).map((part) => part.item));
  const longest = all.reduce<readonly ItemId[]>((most, one) => (one.length > most.length ? one : most), []);
  const known = [...new Set([...longest, ...all.flat()])];
  return setSteps.flatMap((step) => known.filter((item) => items[item].step === step));
}

const weight: Record<Counting, number> = { bought: 0, shared: 1, kept: 2, included: 3 };

function lineOf(project: Project, item: ItemId, all: readonly Counted[], openings: number): SetLine {
  const [counting = 'bought'] = all.map((one) => one.counting).toSorted((a, b) => weight[a] - weight[b]);
  const counted = all.filter((one) => one.counting === counting);
  const sum = (wanted: Counting) =>
    all.reduce((total, { part, counting: how }) => total + (how === wanted ? part.quantity : 0), 0);
  const quantities = new Set(counted.map(({ part }) => part.quantity));
  const members = counted.map(({ member }) => member);
  return {
    item,
    block: blockOf(item),
    name: items[item].name,
    // What another line stands for is ordered as that line says, and what stays is not ordered.
    detail: counting === 'included' || counting === 'kept' ? '' : detailOf(item, members),
    standard: standardOf(item),
    trade: trades[items[item].trade],
    terms: itemTerms(project, item),
    counting,
    each: quantities.size === 1 ? (counted[0]?.part.quantity ?? null) : null,
    total: sum('bought'),
    kept: sum('kept'),
    marks: members.length === openings ? [] : members.map(({ mark }) => mark),
    ruleIds: [...new Set(all.flatMap(({ part }) => part.ruleId ?? []))].toSorted(natural.compare),
  };
}
const natural = new Intl.Collator('en', { numeric: true });

export function blockOf(item: ItemId): Block {
  return itemOf(item).block ?? 'goods';
}

export function standardOf(item: ItemId): string {
  const found = items[item];
  return 'standard' in found ? found.standard : '';
}
