import type { Closet, Product, Supply } from '../../src/domain/model/power.ts';
import type { Project } from '../../src/domain/model/project.ts';
import { demoFloors } from './spaces.ts';
import { floorId, openingId, spaceId } from './kit.ts';

/** Invented closets, supplies and runs; some of them are wrong on purpose, so that findings have something to say. */
const at = '2026-03-05T10:00:00Z';
const by = 'Demo estimator';

const notesOf: Readonly<Record<string, Partial<Closet>>> = {
  p: { linePower: false, temperatureC: 8, notes: 'Unheated; one wall free.' },
  1: { spaceId: spaceId('electrical'), notes: 'Fire alarm panel; 20 A circuit for low voltage.' },
  2: { spaceId: spaceId('comms'), notes: 'Network rack and its UPS.' },
};

const closetId = (floor: string) => `closet-${floor}`;
const supplyId = (key: string) => `supply-${key}`;

function closets(): Record<string, Closet> {
  return Object.fromEntries(
    demoFloors.map(({ key, name }) => {
      const closet: Closet = {
        id: closetId(key),
        name: `IDF ${name.toLowerCase()}`,
        floorId: floorId(key),
        spaceId: null,
        linePower: true,
        temperatureC: null,
        notes: '',
        ...notesOf[key],
      };
      return [closet.id, closet];
    }),
  );
}

type Rating = Partial<Supply> & Pick<Supply, 'amps' | 'outputs' | 'batteryAh'>;
const ratings: Readonly<Record<string, Rating>> = {
  'p-1': { amps: 6, outputs: 12, batteryAh: 33 },
  // Beside the door of the solenoid latch retraction, with the peak its maker gives.
  '1-1': { amps: 2, peakAmps: 32, outputs: 4, class2: false, batteryAh: 7 },
  '1-2': { amps: 10, outputs: 24, batteryAh: 55 },
  '1-3': { amps: 10, outputs: 24, batteryAh: 12 },
  '2-1': { amps: 6, outputs: 12, batteryAh: 26 },
  '2-2': { amps: 6, outputs: 12, batteryAh: null },
  '3-1': { amps: 6, outputs: 12, batteryAh: 33, holdsVolts: true },
  '3-2': { amps: 6, outputs: 12, batteryAh: 33 },
  '4-1': { amps: 6, outputs: 24, batteryAh: 33 },
  '5-1': { amps: 6, outputs: 12, batteryAh: 33 },
  '5-2': { amps: 6, outputs: 12, batteryAh: 33 },
  'r-1': { amps: 4, outputs: 8, batteryAh: 0 },
};

function supplies(): Record<string, Supply> {
  return Object.fromEntries(
    Object.entries(ratings).map(([key, rating]) => {
      const [floor = '', number = ''] = key.split('-');
      const supply: Supply = {
        id: supplyId(key),
        name: `PS-${floor.toUpperCase()}-${number}`,
        closetId: closetId(floor),
        volts: 24,
        current: 'dc',
        peakAmps: null,
        class2: true,
        holdsVolts: false,
        fedBy: 'linePower',
        ...rating,
      };
      return [supply.id, supply];
    }),
  );
}

/** Marks of each supply, with the run as it was paced. */
const paced: Readonly<Record<string, readonly (readonly [mark: string, feet: number])[]>> = {
  'p-1': [
    ['P01', 105],
    ['P02', 225],
    ['P03', 30],
    ['P04', 410],
    ['P05', 120],
    ['S2-P', 195],
  ],
  '1-3': [
    ['101', 210],
    ['109', 210],
    ['110', 105],
    ['110X', 345],
    ['113', 255],
    ['116', 60],
    ['G-02', 30],
    ['G-03', 105],
    ['S2-1', 240],
  ],
  '1-2': [
    ['102', 45],
    ['103', 255],
    ['104', 90],
    ['105', 75],
    ['105A', 225],
    ['105B', 255],
    ['106', 255],
    ['107', 75],
    ['108', 30],
    ['115', 210],
    ['G-01', 270],
  ],
  '1-1': [['104A', 22]],
  '2-2': [
    ['201', 120],
    ['203', 180],
    ['205', 225],
    ['207', 135],
    ['210', 30],
    ['S1-2', 60],
  ],
  '2-1': [
    ['204', 255],
    ['206', 60],
    ['207A', 195],
    ['208', 210],
    ['214', 255],
    ['217', 210],
  ],
  '3-2': [
    ['301', 120],
    ['302', 270],
    ['304', 195],
    ['309', 270],
    ['310', 135],
    ['312', 165],
    ['S1-3', 45],
  ],
  '3-1': [
    ['305', 30],
    ['306', 90],
    ['307', 120],
    ['313', 45],
  ],
  '4-1': [
    ['401', 195],
    ['402', 225],
    ['404', 240],
    ['405', 60],
    ['406', 45],
    ['407', 270],
    ['408', 150],
    ['409', 45],
    ['410', 240],
    ['411', 240],
    ['S1-4', 240],
  ],
  '5-1': [
    ['500', 135],
    ['505', 30],
    ['506', 210],
    ['508', 105],
    ['509', 60],
    ['S1-5', 270],
    ['S2-5', 240],
  ],
  '5-2': [
    ['501', 75],
    ['502', 120],
    ['503', 150],
    ['504', 270],
    ['507', 75],
    ['510', 165],
    ['511', 120],
  ],
  'r-1': [
    ['R01', 210],
    ['R02', 105],
    ['R03', 225],
  ],
};

const book: readonly Product[] = [
  {
    id: 'product-magnet',
    of: 'magnet',
    maker: 'Invented',
    part: 'EM-1200-24',
    volts: 24,
    current: 'dc',
    steadyA: 0.38,
    peakA: null,
    leastVolts: 20.4,
    suppressor: 'builtIn',
    listing: 'UL 1034',
    price: 340,
    at,
    by,
  },
  {
    id: 'product-mortise',
    of: 'mortiseLock',
    maker: 'Invented',
    part: 'ML-24-FS',
    volts: 24,
    current: 'dc',
    steadyA: 0.36,
    peakA: 0.6,
    leastVolts: 20.4,
    suppressor: 'builtIn',
    listing: 'invented; listed for fire doors',
    price: 745,
    at,
    by,
  },
];

/** The project with what feeds its openings. */
export function withPower(project: Project): Project {
  const runs: Record<string, Project['runs'][string]> = {};
  for (const [key, list] of Object.entries(paced)) {
    const closet = closetId(key.split('-')[0] ?? '');
    for (const [mark, feet] of list) {
      const id = openingId(mark);
      if (!project.openings[id]) throw new Error(`Run of ${mark}: there is no such opening.`);
      const said = <T>(value: T) => ({ value, at, by });
      runs[id] = { id, lengthFt: said(feet), closetId: said(closet), supplyId: said(supplyId(key)) };
    }
  }
  return {
    ...project,
    closets: closets(),
    supplies: supplies(),
    productBook: Object.fromEntries(book.map((row) => [row.id, row])),
    runs,
  };
}
