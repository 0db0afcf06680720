import { countingOf } from '../decide/counting.ts';
import type { Decision } from '../decide/decision.ts';
import { valueIn } from '../decide/factView.ts';
import { leavesOf } from '../decide/inPlace.ts';
import { partsOf } from '../decide/parts.ts';
import { type ItemId, items, trades } from '../devices/items.ts';
import { currentNeeded, supplyShare } from '../electrical/supply.ts';
import { valueInWords } from '../text/format.ts';
import { openingsInOrder, type Project } from '../model/project.ts';
import { qty } from '../units/quantity.ts';
import { lockLoad } from './lockLoad.ts';
import type { Decisions } from './openings.ts';
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
 * What the sets only show a share of, each thing once with the openings it serves. How many cabinets, panels or
 * relays do that is laid out by closet, which the survey does not ask; the loads say how large they are together.
 */
export function sharedEquipment(project: Project, decisions: Decisions): readonly SharedLine[] {
  const served = new Map<string, { item: ItemId; kind: string; members: Served[] }>();
  for (const { id, mark } of openingsInOrder(project)) {
    const decision = decisions.get(id);
    if (!decision) continue;
    const parts = partsOf(decision);
    for (const part of parts) {
      const { item } = part;
      if (countingOf(part, parts, leavesOf(decision)) !== 'shared') continue;
      const kind = item === 'lockSupply' ? volts(decision) : '';
      const key = `${item} ${kind}`;
      const found = served.get(key) ?? { item, kind, members: [] };
      served.set(key, found);
      found.members.push({ mark, decision });
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
      sum + partsOf(decision).filter((part) => part.item === 'reader' || part.item === 'readerInside').length,
    0,
  );
  return [`${members.length} lock outputs, ${readers} reader ports`];
}

/** Default currents of the devices: all that hold all day, all others released at once, and the largest start. */
function supplyInWords(members: readonly Served[]): readonly string[] {
  const loads = members.flatMap(({ decision }) => lockLoad(decision) ?? []);
  if (loads.length === 0) return [];
  const steady = loads.filter((load) => load.allDay).map((load) => load.steady);
  const together = loads.filter((load) => !load.allDay).map((load) => load.steady);
  const peak = qty(Math.max(...loads.map((load) => load.inrush - load.steady)), 'A');
  const all = currentNeeded({ steady, together, diversity: 1, peak });
  const held = currentNeeded({ steady, together: [], diversity: 1 });
  return [
    `${amps(held)} held all day, ${amps(all)} with every lock released and one starting`,
    `rated ${amps(all / supplyShare)} in all at ${supplyShare * 100} % use, before it is divided by closet`,
  ];
}

const amps = (value: number) => `${(Math.ceil(value * 10 - 1e-9) / 10).toFixed(1)} A`;
