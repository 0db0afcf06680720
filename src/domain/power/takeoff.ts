import { roundUp } from '../units/told.ts';
import { ampHours, amps, volts } from './figures.ts';
import { cableType, cableUses } from './cables.ts';
import { thickestGauge, usualGauges } from './drop.ts';
import { ceilingDropFt } from './planDistance.ts';
import type { ClosetState, FedOpening, PowerPlan } from './powerPlan.ts';

/** Cut ends and mistakes. Common practice, no source. */
export const waste = 1.1;
/** Lengths in which cable is sold, longest first. Common practice, no source. */
const boxesFt = [1000, 500, 250] as const;

/** Who furnishes, installs and wires it, with its specification section (CSI MasterFormat numbers, from general knowledge). */
export interface Responsibility {
  readonly furnished: string;
  readonly installed: string;
  readonly wired: string;
  readonly section: string;
}
export type TakeoffKind =
  | 'cable'
  | 'raceway'
  | 'supply'
  | 'battery'
  | 'controller'
  | 'transfer'
  | 'suppressor';
const security = 'Security contractor';
const electrician = 'Electrician';
export const responsibility: Readonly<Record<TakeoffKind, Responsibility>> = {
  cable: { furnished: security, installed: electrician, wired: security, section: '28 13 00' },
  raceway: { furnished: electrician, installed: electrician, wired: '', section: '26 05 33' },
  supply: { furnished: security, installed: security, wired: electrician, section: '28 13 00' },
  battery: { furnished: security, installed: security, wired: security, section: '28 13 00' },
  controller: { furnished: security, installed: security, wired: security, section: '28 13 00' },
  transfer: { furnished: 'Door hardware', installed: 'Locksmith', wired: security, section: '08 71 00' },
  suppressor: { furnished: security, installed: security, wired: security, section: '28 13 00' },
};

/** Feet or pieces of one article in one closet. */
export interface TakeoffLine {
  readonly kind: TakeoffKind;
  readonly article: string;
  readonly quantity: number;
  readonly unit: 'ft' | 'pieces';
}

export interface ClosetTakeoff {
  readonly closetId: string | null;
  readonly name: string;
  readonly floorId: string | null;
  readonly lines: readonly TakeoffLine[];
}

export interface Article extends TakeoffLine {
  readonly by: Responsibility;
  /** Conductor feet in it; 0 where it is no cable. */
  readonly conductorFt: number;
  /** Cable with waste, cut from these boxes; empty where it is not sold by the box. */
  readonly boxes: readonly { readonly ft: number; readonly count: number }[];
}

export interface Takeoff {
  readonly articles: readonly Article[];
  readonly closets: readonly ClosetTakeoff[];
}

/** What one opening takes: its cables with slack, transfers, suppressors and raceway. */
export function openingTakeoff({ demand, lengthFt, sizing }: FedOpening): readonly TakeoffLine[] {
  const lines: TakeoffLine[] = [];
  const lockGauge = sizing?.gauge ?? thickestGauge;
  if (lengthFt !== null) {
    for (const { use, count } of demand.cables)
      lines.push({
        kind: 'cable',
        article: cableType(use, lockGauge),
        quantity: lengthFt * count,
        unit: 'ft',
      });
  }
  if (demand.raceway)
    lines.push({ kind: 'raceway', article: 'Raceway to the frame', quantity: ceilingDropFt, unit: 'ft' });
  if (demand.transfer) {
    const { conductors, count, gauge } = demand.transfer;
    const article = `Power transfer, ${conductors} conductors or more, power pair ${gauge} AWG or heavier`;
    lines.push({ kind: 'transfer', article, quantity: count, unit: 'pieces' });
  }
  const rating = demand.lock?.rating;
  if (demand.lock && rating && rating.suppressor !== 'builtIn') {
    const article = rating.current === 'ac' ? 'Suppressor, varistor' : 'Suppressor, diode';
    lines.push({ kind: 'suppressor', article, quantity: demand.lock.count, unit: 'pieces' });
  }
  return lines;
}

function closetLines({ controllers, supplies }: ClosetState): readonly TakeoffLine[] {
  const lines: TakeoffLine[] = supplies.map(({ supply }) => ({
    kind: 'supply' as const,
    article: `Power supply, ${volts(supply.volts)} ${supply.current.toUpperCase()}, ${amps(supply.amps)}, ${supply.outputs} outputs${supply.class2 ? ', Class 2' : ''}`,
    quantity: 1,
    unit: 'pieces' as const,
  }));
  for (const { supply, battery } of supplies) {
    if (!battery.next?.ok) continue;
    const article = `Sealed lead-acid set, ${volts(supply.volts)}, ${ampHours(battery.next.size)}`;
    lines.push({ kind: 'battery', article, quantity: 1, unit: 'pieces' });
  }
  if (controllers > 0)
    lines.push({
      kind: 'controller',
      article: 'Door controller, two doors',
      quantity: controllers,
      unit: 'pieces',
    });
  return lines;
}

/** Lines of one article added up, in the order of their kinds and then by name. */
export function addUp(lines: readonly TakeoffLine[]): readonly TakeoffLine[] {
  const sums = new Map<string, TakeoffLine>();
  for (const line of lines) {
    const before = sums.get(line.article);
    sums.set(line.article, before ? { ...before, quantity: before.quantity + line.quantity } : line);
  }
  const order = Object.keys(responsibility);
  return [...sums.values()].toSorted(
    (a, b) =>
      order.indexOf(a.kind) - order.indexOf(b.kind) ||
      a.article.localeCompare(b.article, 'en', { numeric: true }),
  );
}

/** Whole boxes for so many feet: thousands, and what is left from the next size that holds it. */
export function boxesFor(ft: number): Article['boxes'] {
  if (!(ft > 0)) return [];
  const [largest, ...smaller] = boxesFt;
  const whole = Math.floor((ft + 1e-9) / largest);
  const rest = ft - whole * largest;
  const last =
    rest <= 1e-9 ? undefined : (smaller.toReversed().find((size) => size >= rest - 1e-9) ?? largest);
  const counts = new Map<number, number>();
  if (whole > 0) counts.set(largest, whole);
  if (last !== undefined) counts.set(last, (counts.get(last) ?? 0) + 1);
  return [...counts].map(([size, count]) => ({ ft: size, count }));
}

/** What is ordered for the whole building, and what of it goes to each closet. The sum of the openings and no more. */
export function takeoffOf(plan: PowerPlan): Takeoff {
  const closets = plan.closets.map((state) => ({
    closetId: state.closet?.id ?? null,
    name: state.name,
    floorId: state.floorId,
    lines: addUp([...state.openings.flatMap(openingTakeoff), ...closetLines(state)]),
  }));
  const all = addUp(closets.flatMap(({ lines }) => lines));
  const articles = all.map(
    (line): Article => ({
      ...line,
      by: responsibility[line.kind],
      conductorFt: line.kind === 'cable' ? line.quantity * conductorsIn(line.article) : 0,
      boxes: line.kind === 'cable' ? boxesFor(roundUp(line.quantity * waste)) : [],
    }),
  );
  return { articles, closets };
}

const conductorsByArticle = new Map<string, number>();
for (const gauge of usualGauges)
  for (const [use, { conductors }] of Object.entries(cableUses))
    conductorsByArticle.set(cableType(use as keyof typeof cableUses, gauge), conductors);
function conductorsIn(article: string): number {
  return conductorsByArticle.get(article) ?? 0;
}
