import { device, type DeviceId, deviceIds } from '../devices/devices.ts';

/**
 * Currents of what is fed at a door, by kind and volts: upper end of the usual range, so a product of the user’s own
 * nearly always needs less. Amperes of one device while it is energized; a null says that the kind is not made for it.
 */
export interface LoadClass {
  readonly name: string;
  readonly a12: number | null;
  readonly a24: number | null;
  /** When it starts; the same as steady where it does not start harder. */
  readonly peak12: number | null;
  readonly peak24: number | null;
  /** A coil that needs a suppressor across it unless its maker built one in. A magnet has a circuit of its own. */
  readonly coil: boolean;
  readonly source: string;
}

const noSource = 'common practice, no source';

/** Beside the lock. Electronics, so nothing to suppress. */
const others = {
  reader: { name: 'Credential reader', a12: 0.25, a24: 0.125, source: noSource },
  sensor: {
    name: 'Motion sensor',
    a12: 0.05,
    a24: 0.05,
    source: 'wire appendices of magnets: 0.05 A at 12 and 24 V',
  },
  sounder: { name: 'Local sounder', a12: 0.02, a24: 0.02, source: 'panel guide: 0.02 A' },
  controller: { name: 'Door controller, two doors', a12: 0.5, a24: 0.25, source: noSource },
  operatorRelay: { name: 'Relay to the operator’s control', a12: 0.06, a24: 0.04, source: noSource },
  wirelessHub: { name: 'Radio hub of battery locks', a12: 0.25, a24: 0.15, source: noSource },
} as const;

export const besideLock = Object.keys(others) as readonly (keyof typeof others)[];

export type LoadClassId = DeviceId | keyof typeof others;

/** Every kind that is fed, locks first, by its id. */
export const loadClasses: ReadonlyMap<string, LoadClass> = new Map<string, LoadClass>([
  ...deviceIds.flatMap((id): [string, LoadClass][] => {
    const { name, steadyA24, inrushA24, at12 } = device(id);
    return at12 ? [[id, { name, ...at12, a24: steadyA24, peak24: inrushA24 }]] : [];
  }),
  ...Object.entries(others).map(([id, { name, a12, a24, source }]): [string, LoadClass] => [
    id,
    { name, a12, a24, peak12: a12, peak24: a24, coil: false, source },
  ]),
]);

export function isLoadClass(id: string): id is LoadClassId {
  return loadClasses.has(id);
}
