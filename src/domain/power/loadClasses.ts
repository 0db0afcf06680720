import { type DeviceId, devices } from '../devices/devices.ts';

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

/** What the trade table of devices does not hold: the same device at 12 V, and whether it is a bare coil. */
const locksAt12: Readonly<
  Partial<Record<DeviceId, { a12: number | null; peak12: number | null; coil: boolean; source: string }>>
> = {
  strikeMortise: {
    a12: 0.6,
    peak12: 1,
    coil: true,
    source: 'guide specification: at most 1 A inrush; strike maker’s wire guide: 0.6 A at 12 V',
  },
  strikeCylindrical: {
    a12: 0.6,
    peak12: 1,
    coil: true,
    source: 'guide specification: at most 1 A inrush; strike maker’s wire guide: 0.6 A at 12 V',
  },
  strikeRim: { a12: 0.6, peak12: 1, coil: true, source: 'guide specification: at most 1 A inrush' },
  magnet: { a12: 0.6, peak12: 0.6, coil: false, source: 'wire appendices of magnets: 0.25 to 0.6 A at 12 V' },
  shearMagnet: { a12: 1.5, peak12: 1.5, coil: false, source: noSource },
  boltSolenoid: { a12: 1.2, peak12: 3.6, coil: true, source: noSource },
  boltMotor: { a12: 1, peak12: 1, coil: false, source: noSource },
  mortiseLock: { a12: 0.7, peak12: 1, coil: true, source: 'guide specification: at most 0.7 A, 1 A inrush' },
  cylindricalLock: { a12: 0.7, peak12: 1, coil: true, source: noSource },
  exitTrim: { a12: 0.7, peak12: 1, coil: true, source: noSource },
  latchRetractionMotor: {
    a12: null,
    peak12: null,
    coil: false,
    source: 'trade articles: just over 1 A; made for 24 V',
  },
  latchRetractionSolenoid: {
    a12: null,
    peak12: null,
    coil: true,
    source: 'trade articles: 12 to 16 A for 0.1 to 0.3 s; made for 24 V',
  },
  delayedExitDevice: { a12: null, peak12: null, coil: false, source: `${noSource}; made for 24 V` },
  delayedMagnet: {
    a12: 1,
    peak12: 1,
    coil: false,
    source: 'magnet sheet of 2012: 0.37 A at 12 V; with its sounder, common practice',
  },
  glassPatchLock: { a12: 1.2, peak12: 3.6, coil: true, source: noSource },
  glassRailExit: { a12: 0.6, peak12: 1, coil: true, source: noSource },
  narrowStileLatch: { a12: 0.8, peak12: 1, coil: true, source: noSource },
  gateLock: { a12: 1.5, peak12: 4.5, coil: true, source: noSource },
};

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

export type LoadClassId = DeviceId | keyof typeof others;

/** Every kind that is fed, locks first, by its id. */
export const loadClasses: ReadonlyMap<string, LoadClass> = new Map<string, LoadClass>([
  ...Object.entries(locksAt12).map(([id, { a12, peak12, coil, source }]): [string, LoadClass] => {
    const { name, steadyA24, inrushA24 } = devices[id as DeviceId];
    return [id, { name, a12, a24: steadyA24, peak12, peak24: inrushA24, coil, source }];
  }),
  ...Object.entries(others).map(([id, { name, a12, a24, source }]): [string, LoadClass] => [
    id,
    { name, a12, a24, peak12: a12, peak24: a24, coil: false, source },
  ]),
]);

export function isLoadClass(id: string): id is LoadClassId {
  return loadClasses.has(id);
}
