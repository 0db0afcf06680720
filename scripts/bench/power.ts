// How long power takes for a big building: npx tsx scripts/bench/power.ts [openings] [closets]
import { newProject } from '../../src/domain/model/newProject.ts';
import type { Closet, Supply } from '../../src/domain/model/power.ts';
import type { Project } from '../../src/domain/model/project.ts';
import { applyEdits } from '../../src/domain/commands/command.ts';
import { assignByTool } from '../../src/domain/power/assign.ts';
import { emptyBox, limitAgainst, put } from '../../src/domain/power/box.ts';
import type { Demand } from '../../src/domain/power/demand.ts';
import type { Box } from '../../src/domain/power/pack.ts';
import { layOut } from '../../src/domain/power/powerPlan.ts';
import { ratingOf } from '../../src/domain/power/productBook.ts';
import { seeded } from '../../tests/properties/space.ts';
import { argumentsOf, countOf } from '../lib/arguments.mjs';
import { measure, report } from './measure.ts';

const { words } = argumentsOf({
  usage: 'npx tsx scripts/bench/power.ts [openings] [closets]',
  words: ['openings', 'closets'],
});
const openingCount = countOf(words[0], 'The number of openings', 5000);
const closetCount = countOf(words[1], 'The number of closets', 100);
const random = seeded(20261130);
const pick = <T>(list: readonly T[]) => list[Math.floor(random() * list.length)] as T;

const devices = [
  'strikeMortise',
  'mortiseLock',
  'magnet',
  'shearMagnet',
  'latchRetractionMotor',
  'exitTrim',
] as const;
const closets: Record<string, Closet> = {};
const floors: Project['floors'] = Object.fromEntries(
  Array.from({ length: 25 }, (_, level) => [`f${level}`, { id: `f${level}`, name: `Level ${level}`, level }]),
);
for (let at = 0; at < closetCount; at++) {
  const id = `c${at}`;
  closets[id] = {
    id,
    name: `IDF ${at}`,
    floorId: `f${at % 25}`,
    spaceId: null,
    linePower: true,
    temperatureC: null,
    notes: '',
  };
}
const demands = Array.from({ length: openingCount }, (_, at): Demand => {
  const of = pick(devices);
  const volts = of === 'latchRetractionMotor' || random() < 0.8 ? 24 : 12;
  const rating = ratingOf(of, volts, new Map());
  if (!rating) throw new Error(`${of} has no figure at ${volts} V.`);
  const safe = of === 'magnet' || of === 'shearMagnet' || random() < 0.2;
  return {
    id: `o${at}`,
    mark: String(1000 + at),
    floorId: `f${Math.floor(random() * 25)}`,
    fromSpaceId: null,
    toSpaceId: null,
    volts,
    loads: [{ of, name: rating.name, count: 1, rating, when: safe ? 'standing' : 'release' }],
    standingA: 0.3 + (safe ? rating.steadyA : 0),
    releaseA: safe ? 0 : rating.steadyA,
    peakExtraA: rating.peakA - rating.steadyA,
    lock: { of, name: rating.name, count: 1, rating, when: safe ? 'standing' : 'release' },
    failSafe: safe,
    scheduled: random() < 0.1,
    ownSupply: false,
    source: 'supply',
    readers: 1,
    standbyHours: 4,
    surveyedFt: 20 + Math.floor(random() * 400),
    transfer: undefined,
    cables: [
      { use: 'lock', count: 1 },
      { use: 'reader', count: 1 },
      { use: 'contact', count: 1 },
    ],
    raceway: false,
    notCounted: [],
  };
});
// Openings are spread over the closets of their floor, as by hand: without a plan the nearest would be one closet.
const runs: Project['runs'] = Object.fromEntries(
  demands.map(({ id, floorId }) => {
    const level = Number(floorId?.slice(1));
    const closet = level + 25 * Math.floor(random() * Math.max(1, Math.floor(closetCount / 25)));
    return [id, { id, lengthFt: null, closetId: { value: `c${closet}` }, supplyId: null }];
  }),
);
const openings = Object.fromEntries(demands.map(({ id }) => [id, { id } as Project['openings'][string]]));
const project: Project = { ...newProject('bench', 'Bench'), floors, closets, runs, openings };

let made = 0;
const newId = () => `s${made++}`;
const packing = measure(7, () => void assignByTool(project, demands, newId));
const assigned = assignByTool(project, demands, newId);
const applied = applyEdits(project, assigned.edits, true);
if (!applied.ok) throw new Error('The assignment was refused.');
const runsTook = measure(7, () => void layOut(applied.project, demands));

/** The peer: the first supply with room, of the largest usual size, openings as they come. */
function firstFit(): number {
  const shelves = new Map<string, Box[]>();
  for (const demand of demands) {
    const key = `${runs[demand.id]?.closetId?.value} ${demand.volts}`;
    const boxes = shelves.get(key) ?? [];
    shelves.set(key, boxes);
    let box = boxes.find((one) => limitAgainst(one.supply, one.filled, demand) === undefined);
    if (!box) {
      const supply: Supply = {
        id: '',
        name: '',
        closetId: null,
        volts: demand.volts ?? 24,
        current: 'dc',
        amps: 10,
        peakAmps: null,
        outputs: 24,
        class2: true,
        batteryAh: null,
        holdsVolts: false,
        fedBy: 'linePower',
      };
      box = { supply, filled: emptyBox() };
      boxes.push(box);
    }
    put(box.filled, demand);
  }
  return [...shelves.values()].reduce((sum, boxes) => sum + boxes.length, 0);
}
const peer = measure(7, () => void firstFit());
const peerCount = firstFit();
const total = packing.cpuMs + runsTook.cpuMs;
const ms = (value: number) => `${value.toFixed(1)} ms CPU`;
const ratedBy = (list: readonly { readonly amps: number }[]) => list.reduce((sum, { amps }) => sum + amps, 0);
report(`Power: ${openingCount} openings, ${closetCount} closets`, [
  { what: 'packing', figure: ms(packing.cpuMs) },
  { what: 'runs, supplies, batteries', figure: ms(runsTook.cpuMs) },
  { what: 'both', figure: ms(total), goal: 'under 300 ms CPU', met: total < 300 },
  {
    what: 'first-fit pass alone',
    figure: `${ms(peer.cpuMs)}, packing is ${(packing.cpuMs / peer.cpuMs).toFixed(1)} × that`,
  },
  {
    what: 'supplies',
    figure: `${assigned.supplies}, lower bound ${assigned.bound} (${(assigned.supplies / assigned.bound).toFixed(3)} ×), first fit ${peerCount} (${(peerCount / assigned.bound).toFixed(3)} ×)`,
  },
  {
    what: 'amperes bought',
    figure: `${ratedBy(Object.values(applied.project.supplies))} A, first fit ${peerCount * 10} A`,
  },
]);
