import { z } from 'zod';

/**
 * Uses of a floor that an occupant load table lists. Keys only, because a project file holds them; the factors
 * stand in egress/occupantFactors.ts. A key that was released stays, or files that name it lose it.
 */
export const uses = [
  'business',
  'businessConcentrated',
  'serverHall',
  'assemblyChairs',
  'assemblyTables',
  'assemblyStanding',
  'gallery',
  'gaming',
  'classroom',
  'shop',
  'dayCare',
  'dormitory',
  'courtroom',
  'exercise',
  'industrial',
  'fabricationH5',
  'inpatient',
  'outpatient',
  'institutionalSleeping',
  'kitchen',
  'libraryReading',
  'libraryStacks',
  'lockerRoom',
  'mercantile',
  'mercantileStorage',
  'accessoryStorage',
  'parking',
  'residential',
  'pool',
  'poolDeck',
  'stage',
  'warehouse',
  'baggageClaim',
  'baggageHandling',
  'airportWaiting',
  'airportConcourse',
] as const;
export type Use = (typeof uses)[number];
export const useSchema = z.enum(uses);
