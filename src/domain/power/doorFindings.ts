import { transferDrop } from '../electrical/transfer.ts';
import { midSentence } from '../text/midSentence.ts';
import { qty } from '../units/quantity.ts';
import { cableUses } from './cables.ts';
import { wireShare } from './drop.ts';
import { amps, exactVolts, feet, percent, someMarks, volts } from './figures.ts';
import type { PowerFinding, PowerFindingKind } from './findings.ts';
import { poeLeftW } from './poe.ts';
import type { FedOpening, PowerPlan } from './powerPlan.ts';

const sources = {
  window: 'maker’s wire guide: a device works within 10 % of its rated volts; 5 % of it for the wire',
  battery: 'lead-acid: 1.75 V a cell at the end of discharge, from general knowledge',
  transfer: 'Ohm’s law, 20 °C wire table',
  reader: 'common practice for clock-and-data readers: 500 ft',
  suppressor: 'ANSI/BHMA A156.31 preview: shipped with a suppressor or instructions where one is needed',
  poe: 'IEEE 802.3af and 802.3at; what four makers pass on, read',
} as const;

/** What is wrong at single openings, and what is left out of the sums. */
export function doorFindings(plan: PowerPlan): readonly PowerFinding[] {
  const found: PowerFinding[] = [];
  const tell = (
    kind: PowerFindingKind,
    severity: PowerFinding['severity'],
    says: string,
    source: string,
    ones: readonly FedOpening[],
  ) =>
    found.push({
      kind,
      severity,
      says,
      source,
      openingIds: ones.map(({ demand }) => demand.id),
      supplyId: null,
      closetId: ones.length === 1 ? (ones[0]?.placing.closetId ?? null) : null,
    });
  for (const one of plan.openings) {
    const { demand, placing, sizing, lengthFt } = one;
    const { mark, lock } = demand;
    const rating = lock?.rating;
    if (placing.goneClosetId !== null)
      tell(
        'gone',
        'serious',
        `${mark}: its closet is no longer in the project. Assign it to another; its supply and run are kept.`,
        'project',
        [one],
      );
    if (placing.goneSupplyId !== null)
      tell('gone', 'serious', `${mark}: its supply is no longer in the project. Assign another.`, 'project', [
        one,
      ]);
    if (sizing && rating && demand.volts !== null && sizing.gauge === null) {
      tell(
        'drop',
        'serious',
        `${mark}: no usual cable carries ${midSentence(rating.name)} over ${feet(lengthFt ?? 0)}. On 12 AWG it gets ${exactVolts(sizing.at.steadyV)}, ${exactVolts(sizing.at.peakV)} at its start. Put a supply near the door.`,
        sources.window,
        [one],
      );
    }
    if (rating && demand.transfer) {
      const { gauge, lengthFt: long } = demand.transfer;
      const lost = transferDrop(qty(long, 'ft'), gauge, qty(rating.peakA, 'A'));
      if (demand.volts !== null && lost > demand.volts * wireShare)
        tell(
          'thinWires',
          'serious',
          `${mark}: the ${amps(rating.peakA)} start loses ${exactVolts(lost)} in ${feet(long)} of ${gauge} AWG across the hinge. Use a transfer with heavier or doubled wires.`,
          sources.transfer,
          [one],
        );
    }
    const { longestFt } = cableUses.reader;
    if (lengthFt !== null && lengthFt > longestFt && demand.cables.some(({ use }) => use === 'reader'))
      tell(
        'readerRun',
        'note',
        `${mark}: the reader’s run of ${feet(lengthFt)} is longer than ${feet(longestFt)}. Use an OSDP reader.`,
        sources.reader,
        [one],
      );
    if (lock && rating?.suppressor === 'none')
      tell(
        'suppressor',
        'note',
        `${mark}: ${midSentence(rating.name)} comes without a suppressor. Fit one at the lock, not at the panel.`,
        sources.suppressor,
        [one],
      );
    if (demand.source === 'fireAlarmPanel' && placing.supplyId === null)
      tell(
        'fireAlarmPanel',
        'serious',
        `${mark}: the fire alarm panel is entered as what feeds the lock. Give it a listed access-control supply.`,
        'commentary on NFPA 72: doors are not held locked from the panel’s battery unless they unlock within 10 min of losing line power',
        [one],
      );
  }
  grouped(plan, tell);
  tellPoe(plan, tell);
  return found;
}

type Tell = (
  kind: PowerFindingKind,
  severity: PowerFinding['severity'],
  says: string,
  source: string,
  ones: readonly FedOpening[],
) => void;

/** Findings that many doors share are said once. */
function grouped(plan: PowerPlan, tell: Tell): void {
  const marksOf = (ones: readonly FedOpening[]) => someMarks(ones.map(({ demand }) => demand.mark));
  const listed = new Map<string, FedOpening[]>();
  const reasons = new Map<string, FedOpening[]>();
  for (const one of plan.openings) {
    const { sizing, demand } = one;
    if (sizing && sizing.gauge !== null && sizing.mustWorkAtV !== null && demand.source === 'supply')
      push(listed, `${demand.volts}`, one);
    for (const reason of demand.notCounted) push(reasons, reason, one);
  }
  for (const [rated, ones] of listed) {
    const lowest = Math.min(...ones.map(({ sizing }) => sizing?.mustWorkAtV ?? 0));
    tell(
      'onBattery',
      'note',
      `At the end of the battery the ${rated} V locks of ${ones.length === 1 ? 'one opening' : `${ones.length} openings`} see less than ${percent(0.9)} of their rating, down to ${volts(lowest)} (${marksOf(ones)}). They must be listed to work at that, or the supply must hold its volts on battery.`,
      sources.battery,
      ones,
    );
  }
  for (const [reason, ones] of reasons)
    tell(
      'notCounted',
      'note',
      `Left out of every sum because ${midSentence(reason)}: ${marksOf(ones)}.`,
      'survey',
      ones,
    );
  const unknown = plan.openings.filter(
    ({ lengthFt, demand }) => lengthFt === null && demand.cables.length > 0,
  );
  if (unknown.length > 0)
    tell(
      'lengthUnknown',
      'note',
      `No run is typed, surveyed or on the plan for ${marksOf(unknown)}; their cable is not in the takeoff.`,
      'survey',
      unknown,
    );
}

function push(map: Map<string, FedOpening[]>, key: string, one: FedOpening): void {
  const list = map.get(key);
  if (list) list.push(one);
  else map.set(key, [one]);
}

function tellPoe(plan: PowerPlan, tell: Tell): void {
  for (const { demand, port, neededA } of plan.poe) {
    const one = plan.byId.get(demand.id);
    if (!one) continue;
    if (port === null)
      tell(
        'poe',
        'serious',
        `${demand.mark}: the door needs ${amps(neededA)} at ${demand.volts} V, more than a network-fed controller usually passes on (${poeLeftW.at} W on an 802.3at port). Give the lock a supply of its own.`,
        sources.poe,
        [one],
      );
    else if (port === 'at')
      tell(
        'poe',
        'note',
        `${demand.mark}: the door needs ${amps(neededA)} at ${demand.volts} V, so the switch must give 802.3at; an 802.3af port leaves about ${poeLeftW.af} W.`,
        sources.poe,
        [one],
      );
  }
}
