import type { Use } from '../model/uses.ts';
import type { NfpaUse } from './occupantFactors.ts';

/** How NFPA 101 counts a use: by a factor that differs, by the same factor as the IBC, or not to be said here. */
export type NfpaOfUse = { readonly factor: NfpaUse } | { readonly same: true } | { readonly ask: string };

const same = { same: true } as const;
const notKept: NfpaOfUse = {
  ask: 'its factor for this use is not kept here; take it from Table 7.3.1.2 and give the load yourself',
};

/**
 * NFPA 101 Table 7.3.1.2 (2018 and later), use by use. From general knowledge; where that does not reach, the row
 * asks instead of taking over the figure of the other code.
 */
export const nfpaOfUse: Readonly<Record<Use, NfpaOfUse>> = {
  business: { factor: 'business' },
  businessConcentrated: { factor: 'businessConcentrated' },
  serverHall: notKept,
  assemblyChairs: { factor: 'assemblyChairs' },
  assemblyTables: { factor: 'assemblyTables' },
  assemblyStanding: notKept,
  gallery: notKept,
  gaming: same,
  classroom: same,
  shop: same,
  dayCare: same,
  dormitory: notKept,
  courtroom: notKept,
  exercise: same,
  industrial: { factor: 'industrial' },
  fabricationH5: notKept,
  inpatient: same,
  outpatient: { factor: 'ambulatoryCare' },
  institutionalSleeping: same,
  kitchen: { factor: 'kitchen' },
  libraryReading: same,
  libraryStacks: same,
  lockerRoom: notKept,
  mercantile: {
    ask: 'it counts a store by how its floor relates to the street (30, 40 or 60 ft² a person), which is not asked here',
  },
  mercantileStorage: same,
  accessoryStorage: notKept,
  parking: { factor: 'storage' },
  residential: same,
  pool: same,
  poolDeck: notKept,
  stage: same,
  warehouse: { factor: 'storage' },
  baggageClaim: same,
  baggageHandling: same,
  airportWaiting: same,
  airportConcourse: same,
};
