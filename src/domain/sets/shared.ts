import { countingOf } from '../hardware/counting.ts';
import { type Decision, type Decisions } from '../decide/decision.ts';
import { valueIn } from '../logic/slots.ts';
import { leavesOf } from '../hardware/inPlace.ts';
import { partsOf } from '../hardware/parts.ts';
import { type ItemId, itemOf, items, trades } from '../devices/items.ts';
import { currentNeeded } from '../electrical/supply.ts';
import { valueInWords } from '../text/format.ts';
import { openingsInOrder, type Project } from '../model/project.ts';
import { qty } from '../units/quantity.ts';
import { type Demand, demandOf } from '../power/demand.ts';
import { bookOf } from '../power/productBook.ts';
import { standardOf } from './sets.ts';

/** Something bought once for several openings, with what its size follows from. */
export interface SharedLine {
  readonly item: ItemId;
  readonly name: string;
  readonly detail: string;
  readonly standard: string;
  readonly trade: string;
  /** Openings that have a share of it. */
  readonly marks: readonly string[];
}

/**
 * What the sets only show a share of, each thing once with the openings it serves. How many cabinets and panels do
 * that is laid out by closet in the power room; the loads say how large they are together.
 */
export function sharedEquipment(project: Project, decisions: Decisions): readonly SharedLine[] {
  const served = new Map<string, { item: ItemId; kind: string; members: Served[] }>();
  const book = bookOf(project);
  for (const opening of openingsInOrder(project)) {
    const decision = decisions.get(opening.id);
    if (!decision) continue;
    const demand = demandOf(opening, decision, book);
    const parts = partsOf(decision);
    for (const part of parts) {
      const { item } = part;
      if (countingOf(part, parts, leavesOf(decision)) !== 'shared') continue;
      const kind = item === 'lockSupply' ? volts(decision) : '';
      const key = `${item} ${kind}`;
      const found = served.get(key) ?? { item, kind, members: [] };
      served.set(key, found);
      found.members.push({ mark: opening.mark, decision, demand });
    }
  }
  const order = Object.keys(items);
  return [...served.values()]
    .toSorted((a, b) => order.indexOf(a.item) - order.indexOf(b.item) || a.kind.localeCompare(b.kind, 'en'))
    .map(({ item, kind, members }) => ({
      item,
      name: items[item].name,
      detail: [kind, ...sizeOf(item, members)].filter((word) => word !== '').join(' · '),
      standard: standardOf(item),
      trade: trades[items[item].trade],
      marks: members.map(({ mark }) => mark),
    }));
}
interface Served {
  readonly mark: string;
  readonly decision: Decision;
  readonly demand: Demand | undefined;
}

function volts({ slots }: Decision): string {
  const value = valueIn(slots, 'supplyVolts');
  return value === undefined ? 'voltage not surveyed' : valueInWords('supplyVolts', value);
}

function sizeOf(item: ItemId, members: readonly Served[]): readonly string[] {
  if (item === 'lockSupply') return supplyInWords(members);
  if (item !== 'accessController') return [];
  const readers = members.reduce(
    (sum, { decision }) =>
      sum + partsOf(decision).filter(({ item: one }) => itemOf(one).load === 'reader').length,
    0,
  );
  return [`${members.length} lock outputs, ${readers} reader ports`];
}

/** All that stands under current, all others released at once, and the largest start. */
function supplyInWords(members: readonly Served[]): readonly string[] {
  const loads = members.flatMap(({ demand }) => demand ?? []);
  if (loads.length === 0) return [];
  const peak = qty(Math.max(...loads.map((one) => one.peakExtraA)), 'A');
  const steady = loads.map((one) => qty(one.standingA, 'A'));
  const together = loads.map((one) => qty(one.releaseA, 'A'));
  const all = currentNeeded({ steady, together, diversity: 1, peak });
  const held = currentNeeded({ steady, together: [], diversity: 1 });
  return [
    `${amps(held)} held all day, ${amps(all)} with every lock released and one starting`,
    'supplies by closet: see Power and cable',
  ];
}

const amps = (value: number) => `${(Math.ceil(value * 10 - 1e-9) / 10).toFixed(1)} A`;
