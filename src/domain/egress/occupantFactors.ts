import type { Use } from '../model/uses.ts';
import type { Confidence } from '../rules/rule.ts';

/** Editions of the building code whose occupant load table is kept; 2015 and before for old drawings. */
export type FactorEdition = 2015 | 2018 | 2021 | 2024;

export interface FactorEntry {
  /** Square feet per person. */
  readonly ft2: number;
  readonly confidence: Confidence;
}
export interface UseFactor {
  readonly name: string;
  /** Net: only the floor people use; gross: everything inside the walls. */
  readonly measure: 'net' | 'gross';
  /** Keyed by edition; an edition that is absent does not list the use. */
  readonly editions: Readonly<Partial<Record<FactorEdition, FactorEntry>>>;
}

/** A figure every edition has: as it stands in the copy of 2015, and how sure it is that later ones kept it. */
function all(
  ft2: number,
  confidence: Confidence = 'read',
  later: Confidence = confidence === 'read' ? 'memory' : confidence,
): UseFactor['editions'] {
  const entry = { ft2, confidence: later };
  return { 2015: { ft2, confidence }, 2018: entry, 2021: entry, 2024: entry };
}
function from2018(ft2: number, confidence: Confidence, before?: FactorEntry): UseFactor['editions'] {
  const entry = { ft2, confidence };
  return { ...(before ? { 2015: before } : {}), 2018: entry, 2021: entry, 2024: entry };
}
const gross = (name: string, editions: UseFactor['editions']): UseFactor => ({
  name,
  measure: 'gross',
  editions,
});
const net = (name: string, editions: UseFactor['editions']): UseFactor => ({
  name,
  measure: 'net',
  editions,
});

/**
 * Occupant load factors, ft² per person. IBC Table 1004.5 (2018, 2021, 2024); Table 1004.1.2 (2015).
 * The 2015 column was read in a state’s copy; that later editions kept a figure is from general knowledge,
 * except where another confidence stands.
 */
export const useFactors = {
  business: gross('Business', from2018(150, 'secondary', { ft2: 100, confidence: 'read' })),
  businessConcentrated: gross('Business, concentrated use', from2018(50, 'secondary')),
  serverHall: gross('Information technology equipment facility', {
    2021: { ft2: 300, confidence: 'memory' },
    2024: { ft2: 300, confidence: 'memory' },
  }),
  assemblyChairs: net('Assembly, chairs only', all(7)),
  assemblyTables: net('Assembly, tables and chairs', all(15, 'read', 'secondary')),
  assemblyStanding: net('Assembly, standing', all(5, 'secondary')),
  gallery: net('Exhibit gallery or museum', all(30)),
  gaming: gross('Gaming floor', all(11)),
  classroom: net('Classroom', all(20, 'read', 'secondary')),
  shop: net('Shop or vocational room', all(50)),
  dayCare: net('Day care', all(35)),
  dormitory: gross('Dormitory', all(50)),
  courtroom: net('Courtroom, without fixed seats', all(40)),
  exercise: gross('Exercise room', all(50)),
  industrial: gross('Industrial', all(100)),
  fabricationH5: gross('H-5 fabrication', all(200)),
  inpatient: gross('Inpatient treatment', all(240)),
  outpatient: gross('Outpatient', all(100)),
  institutionalSleeping: gross('Institutional sleeping', all(120)),
  kitchen: gross('Commercial kitchen', all(200)),
  libraryReading: net('Library, reading', all(50)),
  libraryStacks: gross('Library, stacks', all(100)),
  lockerRoom: gross('Locker room', all(50)),
  mercantile: gross('Mercantile', all(60)),
  mercantileStorage: gross('Mercantile storage, stock, shipping', all(300)),
  accessoryStorage: gross('Accessory storage, mechanical', all(300)),
  parking: gross('Parking garage', all(200)),
  residential: gross('Residential', all(200)),
  pool: gross('Skating rink or pool', all(50)),
  poolDeck: gross('Pool or rink deck', all(15)),
  stage: net('Stage or platform', all(15)),
  warehouse: gross('Warehouse', all(500)),
  baggageClaim: gross('Airport baggage claim', all(20)),
  baggageHandling: gross('Airport baggage handling', all(300)),
  airportWaiting: gross('Airport waiting', all(15)),
  airportConcourse: gross('Airport concourse', all(100, 'memory')),
} as const satisfies Record<Use, UseFactor>;

/**
 * Where NFPA 101 Table 7.3.1.2 differs, ft² per person, 2018 edition and later. All from general knowledge.
 * `null`: the table asks no load of this use.
 */
export const nfpaUseFactors = {
  business: 150,
  businessConcentrated: 50,
  assemblyChairs: 7,
  assemblyTables: 15,
  mercantileStreetFloor: 30,
  mercantileStreetFloorsSeveral: 40,
  mercantileBelowStreet: 30,
  mercantileAboveStreet: 60,
  kitchen: 100,
  industrial: 100,
  storage: null,
  ambulatoryCare: 150,
} as const;
export type NfpaUse = keyof typeof nfpaUseFactors;
