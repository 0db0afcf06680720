import type { Project } from '../../domain/model/project.ts';
import { amps, ampHours, exactVolts, feet, hours, percent, volts } from '../../domain/power/figures.ts';
import { cableUses } from '../../domain/power/cables.ts';
import { wireShare } from '../../domain/power/drop.ts';
import { powerFindings } from '../../domain/power/findings.ts';
import { boundOf } from '../../domain/power/assign.ts';
import { lengthFromWords, slackFt } from '../../domain/power/place.ts';
import type { ClosetState, FedOpening, PowerPlan } from '../../domain/power/powerPlan.ts';
import type { SupplyState } from '../../domain/power/supplyState.ts';
import { type Article, takeoffOf, waste } from '../../domain/power/takeoff.ts';
import { counted } from '../../domain/text/counted.ts';
import { type Severity, severityWords } from '../../domain/simulate/outcome.ts';

export interface SupplyLine {
  readonly id: string;
  readonly name: string;
  readonly rating: string;
  readonly load: string;
  readonly headroom: string;
  readonly peak: string;
  readonly outputs: string;
  readonly battery: string;
  readonly feeds: string;
}
export interface RunLine {
  readonly id: string;
  readonly mark: string;
  readonly supply: string;
  readonly loads: string;
  readonly length: string;
  readonly cable: string;
  readonly drop: string;
  readonly atLock: string;
  readonly onBattery: string;
}
export interface ClosetPart {
  readonly id: string | null;
  readonly name: string;
  readonly says: string;
  readonly supplies: readonly SupplyLine[];
  readonly runs: readonly RunLine[];
}
export interface TakeoffRow {
  readonly article: string;
  readonly quantity: string;
  readonly order: string;
  readonly furnished: string;
  readonly installed: string;
  readonly wired: string;
  readonly section: string;
}
export interface PowerSheet {
  readonly says: string;
  readonly closets: readonly ClosetPart[];
  readonly takeoff: readonly TakeoffRow[];
  /** What of it goes to which closet. */
  readonly byCloset: readonly { readonly name: string; readonly says: readonly string[] }[];
  readonly poe: readonly string[];
  readonly findings: readonly {
    readonly severity: Severity;
    readonly word: string;
    readonly says: string;
    readonly source: string;
    readonly openings: readonly { readonly id: string; readonly mark: string }[];
  }[];
  readonly notes: readonly string[];
}

/** Power and cable in words, for the screen and for paper. */
export function powerSheet(project: Project, plan: PowerPlan): PowerSheet {
  const takeoff = takeoffOf(plan);
  const floorOf = (id: string | null) => (id === null ? '' : (project.floors[id]?.name ?? ''));
  return {
    says: inNumbers(plan),
    closets: plan.closets.map((state) => closetPart(state, floorOf(state.floorId), project)),
    takeoff: takeoff.articles.map(takeoffRow),
    byCloset: takeoff.closets
      .filter(({ lines }) => lines.length > 0)
      .map(({ name, floorId, lines }) => ({
        name: [floorOf(floorId), name].filter((word) => word !== '').join(', '),
        says: lines.map((line) => `${line.article}: ${quantityOf(line)}`),
      })),
    poe: plan.poe.map(
      ({ demand, neededA, ports }) =>
        `${demand.mark}: needs ${amps(neededA)} at ${demand.volts} V; an 802.3af port leaves ${amps(ports.af.leftA)}, an 802.3at port ${amps(ports.at.leftA)}. The standby is the battery of the switch.`,
    ),
    findings: powerFindings(project, plan).map(({ severity, says, source, openingIds }) => ({
      severity,
      word: severityWords[severity],
      says,
      source,
      openings: openingIds.map((id) => ({ id, mark: project.openings[id]?.mark ?? id })),
    })),
    notes,
  };
}

const notes = [
  `Runs are one way, with ${slackFt} ft of slack. Drop is counted over both conductors, stranded copper (NEC chapter 9, Table 8), conductor at 50 °C; 20 and 75 °C beside it.`,
  `The wire may take ${percent(wireShare)} of the rated volts under steady current; at its start the lock keeps ${percent(0.9)}. Pass or fail goes by constant current; a plain coil loses less.`,
  'Batteries: 1.25 for age, less than the 20 h rating at a faster rate, 1 % less for each degree below 25 °C; the next size up, never down.',
  'Currents are those of the product book, or upper ends of usual ranges. Nothing here replaces the listing of a device or the electrician’s own calculation.',
];

function inNumbers(plan: PowerPlan): string {
  const closets = plan.closets.filter(({ closet }) => closet !== null).length;
  const used = plan.supplies.filter(({ demands }) => demands.length > 0);
  const loose = plan.openings.filter(
    ({ placing, demand }) => placing.supplyId === null && demand.source !== 'poe',
  ).length;
  const parts = [
    `${counted(plan.openings.length, 'opening')} fed`,
    counted(closets, 'closet'),
    counted(plan.supplies.length, 'supply', 'supplies'),
  ];
  if (used.length > 0) {
    const boxes = used.map(({ supply, demands, standingA, releaseA }) => ({
      supply,
      filled: {
        demands: [...demands],
        standingA,
        releaseA,
        peakExtraA: 0,
        readers: 0,
        alone: demands.some((one) => one.ownSupply),
      },
    }));
    parts.push(`at least ${boundOf(boxes)} needed for what they carry`);
  }
  if (loose > 0) parts.push(`${counted(loose, 'opening')} without a supply`);
  return parts.join(', ');
}

function closetPart(state: ClosetState, floor: string, project: Project): ClosetPart {
  const { closet, openings, readers, controllers } = state;
  const says = [
    floor,
    counted(openings.length, 'opening'),
    counted(readers, 'reader port'),
    `${counted(controllers, 'controller')} for two doors each`,
    closet?.linePower === true ? 'branch circuit there' : '',
    closet?.linePower === false ? 'no branch circuit' : '',
    closet?.notes ?? '',
  ];
  return {
    id: closet?.id ?? null,
    name: state.name,
    says: says.filter((word) => word !== '').join(' · '),
    supplies: state.supplies.map(supplyLine),
    runs: openings.map((one) => runLine(one, project)),
  };
}

function supplyLine(state: SupplyState): SupplyLine {
  const { supply, demands, battery } = state;
  return {
    id: supply.id,
    name: supply.name,
    rating: `${volts(supply.volts)} ${supply.current.toUpperCase()}, ${amps(supply.amps)}${supply.class2 ? ', Class 2' : ''}`,
    load: `${amps(state.standingA)} all day, ${amps(state.continuousA)} with all released`,
    headroom:
      state.leftA < -1e-9
        ? `${amps(-state.leftA)} above the ${amps(state.usableA)} that may be used`
        : `${amps(state.leftA)} left of ${amps(state.usableA)} (80 %)`,
    peak: `${amps(state.peakA)} of ${amps(supply.peakAmps ?? supply.amps)}`,
    outputs: `${state.outputsUsed} of ${supply.outputs}`,
    battery: batteryInWords(state),
    feeds: demands.map(({ mark }) => mark).join(', '),
  };

  function batteryInWords({ battery: { sized, next } }: SupplyState): string {
    const there =
      supply.batteryAh === null
        ? ''
        : supply.batteryAh === 0
          ? 'none there'
          : `${ampHours(supply.batteryAh)} there`;
    const lasts = battery.runtimeH === null ? '' : `lasts about ${hours(battery.runtimeH)}`;
    if (!sized || battery.hours === null)
      return [battery.hours === null ? 'hours not stated' : 'nothing to carry', there, lasts]
        .filter((word) => word !== '')
        .join('; ');
    const factors = `${amps(battery.currentA)} × ${hours(battery.hours)} × ${sized.margin} ÷ ${sized.rate.toFixed(2)} (rate) ÷ ${sized.temperature.toFixed(2)} (${battery.temperatureC} °C)`;
    const size = next?.ok ? `next size ${ampHours(next.size)}` : 'more than one supply can carry';
    const charger = battery.chargerA === null ? '' : `charger about ${amps(battery.chargerA)}`;
    return [`${factors} = ${ampHours(sized.needed)}, ${size}`, there, lasts, charger]
      .filter((word) => word !== '')
      .join('; ');
  }
}

function runLine({ demand, placing, lengthFt, sizing }: FedOpening, project: Project): RunLine {
  const supply = placing.supplyId === null ? undefined : project.supplies[placing.supplyId];
  const feed =
    demand.source === 'poe' ? 'network switch' : (supply?.name ?? (demand.lock ? 'not assigned' : 'none'));
  const loads = demand.loads
    .map(({ name, count, rating }) => {
      const each = rating ? amps(rating.steadyA * count) : 'not counted';
      const start = rating && rating.peakA > rating.steadyA ? `, ${amps(rating.peakA)} at its start` : '';
      return `${name} ${each}${start}`;
    })
    .join('; ');
  const cables = demand.cables
    .map(({ use, count }) => `${count > 1 ? `${count} × ` : ''}${cableUses[use].name}`)
    .join(', ');
  const at = sizing?.at;
  return {
    id: demand.id,
    mark: demand.mark,
    supply: feed,
    loads,
    length:
      placing.feet === null || lengthFt === null
        ? 'not known'
        : `${feet(placing.feet)} + ${slackFt}, ${lengthFromWords[placing.from]}`,
    cable: [gaugeWords(sizing), cables].filter((word) => word !== '').join(' · '),
    drop: at
      ? `${exactVolts(at.dropV)} (20 °C ${at.dropAt20.toFixed(2)}, 75 °C ${at.dropAt75.toFixed(2)})`
      : '',
    atLock: at
      ? `${exactVolts(at.steadyV)}, ${exactVolts(at.peakV)} at its start; plain coil ${exactVolts(at.coilV)}`
      : '',
    onBattery: at
      ? `${exactVolts(at.batteryV)}${sizing?.mustWorkAtV === null ? '' : '; must be listed for it'}`
      : '',
  };
}

function gaugeWords(sizing: FedOpening['sizing']): string {
  if (!sizing) return '';
  if (sizing.gauge === null) return 'no usual cable: supply near the door';
  const metric = sizing.metric === null ? '' : ` (${sizing.metric} mm²)`;
  return `${sizing.gauge} AWG${metric}, good to ${feet(sizing.longestFt)}`;
}

function quantityOf({
  quantity,
  unit,
}: {
  readonly quantity: number;
  readonly unit: 'ft' | 'pieces';
}): string {
  return unit === 'ft' ? feet(quantity) : String(quantity);
}

function takeoffRow({ by, boxes, conductorFt, ...line }: Article): TakeoffRow {
  const order = boxes.map(({ ft, count }) => `${count} × ${feet(ft)}`).join(' + ');
  return {
    article: line.article,
    quantity:
      conductorFt > 0 ? `${feet(line.quantity)}, ${feet(conductorFt)} of conductor` : quantityOf(line),
    order: order === '' ? quantityOf(line) : `${order} (with ${percent(waste - 1)} waste)`,
    furnished: by.furnished,
    installed: by.installed,
    wired: by.wired,
    section: by.section,
  };
}
