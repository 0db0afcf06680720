import type { ItemId } from '../../src/domain/devices/items.ts';
import { type ItemEntry, noEntry, type Price } from '../../src/domain/model/bid.ts';
import type { Project } from '../../src/domain/model/project.ts';

/**
 * Invented prices, rates and terms, none of any maker or dealer. A few are left out on purpose, so that a missing price
 * has something to say.
 */
const stamp = { at: '2026-03-05T10:00:00Z', by: 'Invented for the demo' };

/** By item, for whatever part number of it. */
const byItem: Partial<Record<ItemId, number>> = {
  hinges: 24,
  continuousHinge: 190,
  powerTransfer: 145,
  leafRaceway: 85,
  frameRaceway: 110,
  electricStrike: 230,
  fireListedStrike: 310,
  continuousDutyStrike: 265,
  preloadStrike: 420,
  storeroomLockset: 280,
  mechanicalLock: 240,
  passiveLatch: 260,
  latchingHardware: 260,
  magnetLock: 290,
  magnetBracket: 48,
  glassBracket: 95,
  electricBolt: 360,
  mortiseLock: 720,
  cylindricalLock: 560,
  exitTrim: 690,
  latchRetraction: 840,
  panicHardware: 780,
  fireExitHardware: 960,
  delayedExitDevice: 2150,
  delayedMagnet: 980,
  glassRails: 1450,
  glassRailExit: 2600,
  narrowStileLatch: 640,
  batteryLock: 890,
  pushPull: 120,
  removeLock: 95,
  removeElectricLock: 120,
  removeAddedLock: 45,
  leafPreparation: 150,
  newLeaf: 980,
  keyCylinder: 62,
  closer: 215,
  automaticOperator: 2900,
  gasketing: 78,
  latchGuard: 34,
  reader: 210,
  doorPosition: 28,
  doorPositionInactive: 28,
  requestToExit: 75,
  exitShuntSensor: 96,
  exitSensor: 135,
  pushToExit: 88,
  signPushToExit: 22,
  fireAlarmRelease: 260,
  fireAlarmRelatch: 260,
  operatorSequence: 140,
  acceptanceTest: 180,
  holeRecord: 40,
};

/** By part number, and by the foot. */
const byPart: Readonly<Record<string, number>> = {
  'storeroomLockset/bored': 190,
  'cable/12 AWG, 2 conductors': 0.74,
  'cable/14 AWG, 2 conductors': 0.52,
  'cable/16 AWG, 2 conductors': 0.38,
  'cable/18 AWG, 2 conductors': 0.27,
  'cable/18 AWG, 4 conductors': 0.44,
  'cable/20 AWG, 2 conductors': 0.22,
  'cable/22 AWG, 2 conductors': 0.16,
  'cable/22 AWG, 4 conductors': 0.24,
  'cable/22 AWG, 6 conductors, shielded': 0.41,
  'supply/Power supply, 24 V DC, 6 A, 12 outputs, Class 2': 465,
  'supply/Power supply, 24 V DC, 10 A, 24 outputs, Class 2': 690,
  'battery/Sealed lead-acid set, 24 V, 7 Ah': 58,
  'battery/Sealed lead-acid set, 24 V, 9 Ah': 72,
  'battery/Sealed lead-acid set, 24 V, 18 Ah': 130,
  'battery/Sealed lead-acid set, 24 V, 26 Ah': 185,
  'controller/Door controller, two doors': 720,
  'suppressor/Suppressor, diode': 3.5,
  'labor/locksmith': 92,
  'labor/security': 88,
  'labor/doorSupplier': 84,
};

const finishes: Partial<Record<ItemId, string>> = {
  electricStrike: '630',
  fireListedStrike: '630',
  storeroomLockset: '626',
};

export function withPrices(project: Project): Project {
  const price = ([id, amount]: readonly [string, number]): [string, Price] => [id, { id, amount, ...stamp }];
  const entry = ([id, finish]: readonly [string, string]): [string, ItemEntry] => [
    id,
    { ...noEntry(id), finish, ...stamp },
  ];
  return {
    ...project,
    bid: {
      ...project.bid,
      projectNumber: 'DEMO-01',
      address: '1 Example Street, Invented city',
      drawnBy: 'Demo estimator',
      markUpPercent: 12,
      taxPercent: 8.25,
    },
    prices: Object.fromEntries([...Object.entries(byItem), ...Object.entries(byPart)].map(price)),
    itemBook: Object.fromEntries(Object.entries(finishes).map(entry)),
  };
}
