import type { Decision } from '../decide/decision.ts';
import type { Gauge } from '../electrical/conductor.ts';
import { cableType, cableUses, type CableId } from '../power/cables.ts';
import { type OneLine, oneLineOf, type SignalId, type StationId } from './oneLine.ts';

/** One conductor from a terminal to a terminal. */
export interface Wire {
  readonly from: string;
  readonly to: string;
  /** Goes through the transfer at the hinges. */
  readonly hinge: boolean;
}
/** Conductors that lie in one cable, or the links inside the closet. */
export interface WireGroup {
  readonly name: string;
  readonly wires: readonly Wire[];
}
export interface PointToPoint {
  readonly groups: readonly WireGroup[];
  readonly onFireAlarm: string;
  readonly notSurveyed: readonly string[];
}

/** Two terminals of whatever stands in the lock circuit, as it is passed from the supply outward. */
const passes: Readonly<Partial<Record<StationId, { name: string; place: 'closet' | 'door' }>>> = {
  alarm: { name: 'Fire alarm contact', place: 'closet' },
  command: { name: 'Remote release', place: 'closet' },
  button: { name: 'Push button', place: 'door' },
  hardwareSwitch: { name: 'Switch in hardware', place: 'door' },
  relay: { name: 'Controller relay', place: 'closet' },
};

/** Terminals of the controller that each device at the door goes to, and its own. */
const signalWires: Readonly<
  Record<SignalId, { use: CableId; wires: readonly (readonly [from: string, to: string])[] }>
> = {
  reader: { use: 'reader', wires: readerWires('Reader') },
  readerInside: { use: 'reader', wires: readerWires('Inside reader') },
  doorContact: { use: 'contact', wires: switchWires('Door input', 'Door contact') },
  doorContactInactive: { use: 'contact', wires: switchWires('Door input', 'Contact, inactive leaf') },
  requestToExit: { use: 'requestToExit', wires: switchWires('REX input', 'Request to exit') },
  exitShunt: { use: 'sensor', wires: sensorWires('Motion detector') },
  exitSensor: { use: 'sensor', wires: sensorWires('Exit sensor') },
  button: { use: 'release', wires: switchWires('REX input', 'Push button') },
  hardwareSwitch: { use: 'release', wires: switchWires('REX input', 'Switch in hardware') },
};

function readerWires(name: string) {
  return ['+12 V', '0 V', 'Data 0 / A', 'Data 1 / B', 'Lamp', 'Sounder'].map(
    (terminal) => [`Reader port ${terminal}`, `${name} ${terminal}`] as const,
  );
}
function switchWires(input: string, name: string) {
  return [
    [`${input} +`, `${name} C`],
    [`${input} −`, `${name} NC`],
  ] as const;
}
function sensorWires(name: string) {
  return [
    ['Supply +', `${name} +`],
    ['Supply −', `${name} −`],
    ['REX input +', `${name} C`],
    ['REX input −', `${name} NC`],
  ] as const;
}

/**
 * Terminal to terminal, from the same circuit that the conditions are run with and the one-line diagram draws: every
 * contact in its order, then what reports to the controller. Terminals carry the usual letters, not a maker’s.
 */
export function pointToPoint(decision: Decision, lockGauges: readonly Gauge[]): PointToPoint | undefined {
  const line = oneLineOf(decision);
  if (!line) return undefined;
  const inLeaf = line.circuit.some(({ id }) => id === 'hinges');
  const type = (use: CableId) => `${cableUses[use].name}: ${typeOf(use, lockGauges)}`;
  const { closet, lock } = lockWires(line, inLeaf);
  const groups: WireGroup[] = [
    { name: 'In the closet', wires: closet },
    { name: type('lock'), wires: lock },
  ];
  for (const { id } of line.signals) {
    const { use, wires } = signalWires[id];
    groups.push({
      name: type(use),
      wires: wires.map(([from, to]) => ({ from, to, hinge: inLeaf && id === 'requestToExit' })),
    });
  }
  return { groups, onFireAlarm: line.onFireAlarm, notSurveyed: line.notSurveyed };
}

/** Openings of one set lie at different distances, so their lock cables may differ; the thinnest first. */
function typeOf(use: CableId, lockGauges: readonly Gauge[]): string {
  const { gauge, conductors } = cableUses[use];
  if (gauge !== null) return cableType(use, gauge);
  const sizes = [...new Set(lockGauges)].toSorted((a, b) => b - a);
  const words = sizes.length === 0 ? 'gauge not known yet' : `${sizes.join(', ')} AWG`;
  return `${words}, ${conductors} conductors`;
}

function lockWires(line: OneLine, inLeaf: boolean): { closet: Wire[]; lock: Wire[] } {
  const [closet, lock]: [Wire[], Wire[]] = [[], []];
  let from = 'Supply output +';
  let at: 'closet' | 'door' = 'closet';
  for (const { id, contact } of line.circuit) {
    const passed = passes[id];
    if (!passed) continue;
    const rest = contact === 'open' ? 'NO' : 'NC';
    const wire = { from, to: `${passed.name} C`, hinge: inLeaf && id === 'hardwareSwitch' };
    (at === 'closet' && passed.place === 'closet' ? closet : lock).push(wire);
    from = `${passed.name} ${rest}`;
    at = passed.place;
  }
  lock.push({ from, to: 'Lock +', hinge: inLeaf }, { from: 'Supply output −', to: 'Lock −', hinge: inLeaf });
  return { closet, lock };
}
