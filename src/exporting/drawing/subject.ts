import { type FactKey, type FactValues, factSchemas } from '../../domain/model/fields.ts';
import { fieldRegistry } from '../../domain/model/field.ts';
import type { Measure } from './annotate.ts';

export type DoorType = NonNullable<FactValues['doorType']>;

/** Swinging leaves share one way of drawing; each other type has its own. */
export const swinging: ReadonlySet<DoorType> = new Set<DoorType>([
  'single',
  'pair',
  'doubleEgressPair',
  'doubleActing',
  'balanced',
  'gateSwing',
]);
const pairs: ReadonlySet<DoorType> = new Set<DoorType>(['pair', 'doubleEgressPair']);
const gates: ReadonlySet<DoorType> = new Set<DoorType>(['gateSwing', 'gateSlide']);
const stiles: ReadonlySet<DoorType> = new Set<DoorType>(['turnstile', 'turnstileFull', 'turnstileSecurity']);

/** Sizes drawn when nobody measured: usual ones, always dashed and named. Inches. */
const usualWidth: Record<DoorType, number> = {
  single: 36,
  pair: 36,
  doubleEgressPair: 48,
  doubleActing: 36,
  balanced: 36,
  slidingManual: 48,
  slidingAutomatic: 36,
  folding: 96,
  revolving: 42,
  overhead: 120,
  grille: 120,
  gateSwing: 42,
  gateSlide: 144,
  turnstile: 24,
  turnstileFull: 30,
  turnstileSecurity: 24,
};
const usualHeight: Record<DoorType, number> = {
  single: 84,
  pair: 84,
  doubleEgressPair: 84,
  doubleActing: 84,
  balanced: 84,
  slidingManual: 84,
  slidingAutomatic: 84,
  folding: 96,
  revolving: 84,
  overhead: 120,
  grille: 108,
  gateSwing: 72,
  gateSlide: 72,
  turnstile: 40,
  turnstileFull: 84,
  turnstileSecurity: 42,
};

/** Usual heights on walls and leaves; drawn as typical and lettered so. */
export const typical = { hardware: 40, button: 42, buttonRange: '40"–48"', reader: 42 } as const;

export interface Subject {
  readonly facts: FactValues;
  /** What is drawn: a single leaf, dashed, while the type is unknown. */
  readonly type: DoorType;
  readonly leaves: 1 | 2;
  readonly width: Measure;
  readonly height: Measure;
  readonly hardware: Measure;
  /** As seen from the egress side, where hand words, told from the secure side, are mirrored. */
  readonly hingeLeft: boolean;
  /** Toward a person on the egress side; undefined while nobody knows. */
  readonly towardEgress: boolean | undefined;
  /** Which side of the sheet the lock, the reader and the button are on: +1 right, -1 left. */
  readonly lockSide: 1 | -1;
  readonly notSurveyed: readonly string[];
}

function labelOf(key: FactKey): string {
  return fieldRegistry.get(factSchemas[key])?.label ?? key;
}

/** The words of a chosen value, as the form says them; undefined when unknown. */
export function wordsOf(key: FactKey, facts: FactValues): string | undefined {
  const value = facts[key];
  return typeof value === 'string' ? fieldRegistry.get(factSchemas[key])?.options?.[value] : undefined;
}

/** Facts whose absence changes the drawing, by type. */
function drawnFacts(type: DoorType, pair: boolean): readonly FactKey[] {
  const always: readonly FactKey[] = ['doorType', 'leafWidthIn', 'leafHeightIn'];
  if (stiles.has(type)) return always;
  if (type === 'revolving' || type === 'overhead' || type === 'grille') return [...always, 'leafMaterial'];
  if (!swinging.has(type)) return [...always, 'leafMaterial', 'frameMaterial'];
  const hung: readonly FactKey[] = [
    ...always,
    'handing',
    'leafMaterial',
    'frameMaterial',
    'hinges',
    'latch',
    'closing',
  ];
  if (gates.has(type)) return hung;
  return pair ? [...hung, 'visionPanel', 'inactiveBolts', 'mullion'] : [...hung, 'visionPanel'];
}

function sideOf(type: DoorType, pair: boolean, hingeLeft: boolean): 1 | -1 {
  if (!swinging.has(type)) return type === 'slidingManual' || type === 'gateSlide' ? -1 : 1;
  // The lock of a pair is in its middle; the wall nearest to the active leaf is at that leaf's hinges.
  return hingeLeft === pair ? -1 : 1;
}

/** Turns facts into what can be drawn; every default it takes is listed as not surveyed. */
export function subjectOf(facts: FactValues): Subject {
  const type = facts.doorType ?? 'single';
  const pair = pairs.has(type);
  const { handing } = facts;
  const width = facts.leafWidthIn ?? usualWidth[type];
  const height = facts.leafHeightIn ?? usualHeight[type];
  const hardware = facts.egressHardwareHeightIn;
  const swing =
    handing !== undefined
      ? !handing.endsWith('R')
      : facts.swingsWithEgress === undefined
        ? undefined
        : !facts.swingsWithEgress;
  return {
    facts,
    type,
    leaves: pair ? 2 : 1,
    width: { inches: width, known: facts.leafWidthIn !== undefined },
    height: { inches: height, known: facts.leafHeightIn !== undefined },
    hardware:
      hardware === undefined
        ? { inches: Math.min(typical.hardware, height * 0.6), known: true, typical: true, after: 'typical' }
        : { inches: hardware, known: true },
    // LH and LHR: hinges left from the secure side, so right from here.
    hingeLeft: handing === undefined ? true : handing.startsWith('RH'),
    towardEgress: swing,
    lockSide: sideOf(type, pair, handing?.startsWith('RH') ?? true),
    notSurveyed: drawnFacts(type, pair)
      .filter((key) => facts[key] === undefined)
      .map(labelOf),
  };
}
