import { all, any, type Condition, is, not } from '../logic/condition.ts';
import type { DeviceId } from '../devices/devices.ts';

/**
 * Which device goes into which door, frame and latch. Cells are trade practice (no source), to be confirmed by
 * a locksmith. `ok` normal work · `mod` possible with the changes noted · `list` only as the listing or the
 * laboratory allows · `no` impossible or wrong · `ask` not a usual pairing.
 */
export type CellVerdict = 'ok' | 'mod' | 'list' | 'no' | 'ask';
export interface Cell {
  readonly verdict: CellVerdict;
  readonly notes: readonly number[];
  /** A power transfer over the hinge line is needed. */
  readonly transfer: boolean;
  /** One device on each leaf. */
  readonly both: boolean;
}

const columns = [
  'strikeMortise',
  'strikeCylindrical',
  'strikeRim',
  'magnet',
  'shearMagnet',
  'bolt',
  'mortiseLock',
  'cylindricalLock',
  'exitTrim',
  'latchRetraction',
  'batteryLock',
  'delayedExitDevice',
  'delayedMagnet',
  'glassPatchLock',
  'glassRailExit',
  'narrowStileLatch',
  'gateLock',
] as const;
type Column = (typeof columns)[number];

const columnOf: Record<DeviceId, Column | 'mechanicalLock' | 'detentionLock' | 'operatorControl'> = {
  strikeMortise: 'strikeMortise',
  strikeCylindrical: 'strikeCylindrical',
  strikeRim: 'strikeRim',
  magnet: 'magnet',
  shearMagnet: 'shearMagnet',
  boltSolenoid: 'bolt',
  boltMotor: 'bolt',
  mortiseLock: 'mortiseLock',
  cylindricalLock: 'cylindricalLock',
  exitTrim: 'exitTrim',
  latchRetractionMotor: 'latchRetraction',
  latchRetractionSolenoid: 'latchRetraction',
  delayedExitDevice: 'delayedExitDevice',
  delayedMagnet: 'delayedMagnet',
  glassPatchLock: 'glassPatchLock',
  glassRailExit: 'glassRailExit',
  narrowStileLatch: 'narrowStileLatch',
  gateLock: 'gateLock',
  batteryLock: 'batteryLock',
  mechanicalLock: 'mechanicalLock',
  noLock: 'mechanicalLock',
  detentionLock: 'detentionLock',
  operatorControl: 'operatorControl',
};

export interface FitRow {
  readonly row: number;
  readonly name: string;
  readonly when: Condition;
  readonly cells: Readonly<Record<Column, Cell>>;
}

/** "mod8 mod3 +T x2" → a cell. Throws on anything else, so a slip in the table cannot pass. */
function cell(text: string): Cell {
  const words = text.split(' ');
  const transfer = words.includes('+T');
  const both = words.includes('x2');
  const rest = words.filter((word) => word !== '+T' && word !== 'x2');
  const parsed = rest.map((word) => {
    const found = /^(ok|mod|list|no|ask)(\d+)?$/.exec(word);
    if (!found) throw new Error(`Fit matrix: cannot read cell "${text}".`);
    return { verdict: found[1] as CellVerdict, note: found[2] ? Number(found[2]) : undefined };
  });
  const [first] = parsed;
  if (!first) throw new Error('Fit matrix: empty cell.');
  return {
    verdict: first.verdict,
    notes: parsed.flatMap((part) => (part.note === undefined ? [] : [part.note])),
    transfer,
    both,
  };
}

/** Cells in column order: ES-mortise, ES-cylindrical, ES-rim, magnet, shear, bolt, mortise, cylindrical, trim, retraction, battery | delayed bar, delayed magnet, glass patch, glass rail, narrow-stile, gate. */
function row(number: number, name: string, when: Condition, cells: string): FitRow {
  const texts = cells.split(',').map((part) => part.trim());
  if (texts.length !== columns.length) {
    throw new Error(`Fit matrix row ${number} has ${texts.length} cells, not ${columns.length}.`);
  }
  return {
    row: number,
    name,
    when,
    cells: Object.fromEntries(
      columns.map((column, index) => [column, cell(texts[index] as string)]),
    ) as Record<Column, Cell>,
  };
}

const single = is('doorType', 'single', 'balanced');
const pair = is('doorType', 'pair');
const hinged = is('doorType', 'single', 'balanced', 'pair');
const metalLeaf = is('leafMaterial', 'hollowMetal');
const woodLeaf = is('leafMaterial', 'woodMineralCore', 'woodSolidCore');
const narrow = is('leafMaterial', 'aluminiumNarrow');
const mediumOrWide = is('leafMaterial', 'aluminiumMedium', 'aluminiumWide');
const glass = is('leafMaterial', 'glassFrameless');
const stiffFrame = is('frameMaterial', 'hollowMetal', 'aluminium');
const noLatch = is('latch', 'pushPull', 'roller');

export const fitRows: readonly FitRow[] = [
  row(
    1,
    'Hollow metal leaf, bored latch',
    all(single, metalLeaf, is('latch', 'bored')),
    'no, ok, no, ok, mod1, mod2, mod3, ok +T, no, no, ok, mod26 +T, ok, no, no, no, no',
  ),
  row(
    2,
    'Hollow metal leaf, mortise latch',
    all(single, metalLeaf, is('latch', 'mortise')),
    'ok, no, no, ok, mod1, mod2, ok +T, mod4, no, no, ok, mod26 +T, ok, no, no, no, no',
  ),
  row(
    3,
    'Hollow metal leaf, mortise latch with deadbolt',
    all(single, metalLeaf, is('latch', 'mortiseDeadbolt')),
    'mod5, no, no, ok, mod1, mod2, ok +T, mod4, no, no, ok, mod26 +T, mod27, no, no, no, no',
  ),
  row(
    4,
    'Hollow metal leaf, rim exit device',
    all(single, metalLeaf, is('latch', 'rimExit')),
    'no, no, ok, ok, mod1, mod2, no, no, ok +T, ok +T, mod6, ok +T, ok, no, no, no, no',
  ),
  row(
    5,
    'Hollow metal pair, rim devices on a mullion',
    all(pair, metalLeaf, is('latch', 'rimExit')),
    'no, no, ok, ok, mod1, ask, no, no, ok +T, ok +T, mod6, ok +T, ok x2, no, no, no, no',
  ),
  row(
    6,
    'Hollow metal leaf or pair, vertical rods',
    all(hinged, metalLeaf, is('latch', 'verticalRods')),
    'no, no, no, ok, mod1, ask, no, no, ok +T, ok +T, mod6, ok +T, ok x2, no, no, no, no',
  ),
  row(
    7,
    'Hollow metal pair, mortise lock and bolts',
    all(pair, metalLeaf, is('latch', 'mortise', 'mortiseDeadbolt', 'bored')),
    'mod7, no, no, ok, mod1, ask, ok +T, mod4, no, no, ok, mod26 +T x2, mod27 x2, no, no, no, no',
  ),
  row(
    9,
    'Wood leaf, wood jamb, bored latch',
    all(single, woodLeaf, is('frameMaterial', 'wood'), is('latch', 'bored')),
    'no, mod9, no, ok, mod1, mod2, mod3, ok +T, no, no, ok, mod26 +T, ok, no, no, no, no',
  ),
  row(
    10,
    'Wood leaf, metal frame, bored latch',
    all(single, woodLeaf, stiffFrame, is('latch', 'bored')),
    'no, ok, no, ok, mod1, mod2, mod3, ok +T, no, no, ok, mod26 +T, ok, no, no, no, no',
  ),
  row(
    11,
    'Wood hollow-core or panel leaf',
    all(
      hinged,
      is('leafMaterial', 'woodHollowCore'),
      not(noLatch),
      not(is('latch', 'boredPlusDeadbolt', 'deadboltOnly')),
    ),
    'no, mod9, no, mod10, no, no, no, mod3, no, no, mod3, no, mod10, no, no, no, no',
  ),
  row(
    12,
    'Narrow-stile aluminum, deadlatch',
    all(hinged, narrow, is('latch', 'deadlatch')),
    'no, mod11, no, ok, mod1, mod2, no, no, no, no, mod12, mod26 +T, ok, no, no, ok +T, no',
  ),
  row(
    13,
    'Narrow-stile aluminum, hookbolt or deadbolt',
    all(hinged, narrow, is('latch', 'hookbolt', 'deadboltOnly')),
    'no, no, no, ok, mod1, no, no, no, no, no, mod12, mod26 +T, mod27, no, no, mod28 +T, no',
  ),
  row(
    14,
    'Narrow-stile aluminum, rim exit device',
    all(hinged, narrow, is('latch', 'rimExit')),
    'no, no, ok, ok, mod1, ask, no, no, ok +T, ok +T, no, ok +T, ok, no, no, no, no',
  ),
  row(
    15,
    'Narrow-stile aluminum, concealed rods',
    all(hinged, narrow, is('latch', 'verticalRods')),
    'no, no, no, ok30, mod1, ask, no, no, ok +T, ok +T, no, ok +T, ok x2, no, no, no, no',
  ),
  row(
    16,
    'Wide-stile aluminum, mortise lock',
    all(hinged, is('leafMaterial', 'aluminiumWide'), is('latch', 'mortise', 'mortiseDeadbolt')),
    'ok, no, no, ok, mod1, mod2, ok +T, no, no, no, mod3, mod26 +T, ok, no, no, no, no',
  ),
  row(
    17,
    'Frameless glass, patch fittings',
    all(single, glass, is('latch', 'patch', 'pushPull')),
    'no, no, no, mod13, mod13, mod14, no, no, no, no, mod15, no, mod13, ok, mod29, no, no',
  ),
  row(
    18,
    'Frameless glass, rail exit device',
    all(hinged, glass, is('latch', 'railExit')),
    'no, no, mod16, mod13, ok, mod14, no, no, ok +T, ok +T, no, no, mod13, no, ok, no, no',
  ),
  row(
    19,
    'Manual sliding leaf',
    is('doorType', 'slidingManual'),
    'no, no, no, mod17, no, mod2, no, no, no, no, mod3, no, no, no, no, no, no',
  ),
  row(
    20,
    'Double-acting leaf',
    is('doorType', 'doubleActing'),
    'no, no, no, no, ok, mod2, no, no, no, no, no, no, no, mod14, no, no, no',
  ),
  row(
    21,
    'Double-egress pair',
    is('doorType', 'doubleEgressPair'),
    'no, no, no, ok x2, mod1, ask, no, no, ok +T, ok +T, no, ok +T, ok x2, no, no, no, no',
  ),
  row(
    41,
    'Swinging gate with a gate lock',
    all(is('doorType', 'gateSwing'), is('latch', 'gateLock')),
    'no, no, no, mod17 mod18, no, mod2 mod18, no, no, no, no, mod18, mod18 +T, mod17 mod18, no, no, no, ok',
  ),
  row(
    23,
    'Swinging gate on posts',
    all(is('doorType', 'gateSwing'), not(is('latch', 'gateLock'))),
    'no, no, mod18, mod17 mod18, no, mod2 mod18, no, no, mod18 +T, mod18 +T, mod18, mod18 +T, mod17 mod18, no, no, no, ok',
  ),
  row(
    24,
    'Sliding gate, overhead or coiling door, grille',
    is('doorType', 'gateSlide', 'overhead', 'grille'),
    'no, no, no, mod17 mod19, no, mod19, no, no, no, no, no, no, no, no, no, no, no',
  ),
  row(
    25,
    'Wood leaf, mortise lock',
    all(single, woodLeaf, is('latch', 'mortise', 'mortiseDeadbolt')),
    'ok, no, no, ok, mod1, mod2, ok +T, mod4, no, no, ok, mod26 +T, ok, no, no, no, no',
  ),
  row(
    26,
    'Wood leaf, rim exit device',
    all(hinged, woodLeaf, is('latch', 'rimExit')),
    'no, no, ok, ok, mod1, mod2, no, no, ok +T, ok +T, mod6, ok +T, ok, no, no, no, no',
  ),
  row(
    27,
    'Wood leaf or pair, vertical rods',
    all(hinged, woodLeaf, is('latch', 'verticalRods')),
    'no, no, no, ok, mod1, ask, no, no, ok +T, ok +T, mod6, ok +T, ok, no, no, no, no',
  ),
  row(
    28,
    'Medium or wide-stile aluminum, rim exit device',
    all(hinged, mediumOrWide, is('latch', 'rimExit')),
    'no, no, ok, ok, mod1, ask, no, no, ok +T, ok +T, mod6, ok +T, ok, no, no, no, no',
  ),
  row(
    29,
    'Medium or wide-stile aluminum, concealed rods',
    all(hinged, mediumOrWide, is('latch', 'verticalRods')),
    'no, no, no, ok30, mod1, ask, no, no, ok +T, ok +T, mod6, ok +T, ok, no, no, no, no',
  ),
  row(
    30,
    'Medium-stile aluminum, mortise lock',
    all(hinged, is('leafMaterial', 'aluminiumMedium'), is('latch', 'mortise', 'mortiseDeadbolt')),
    'mod20, no, no, ok, mod1, mod2, mod20 +T, no, no, no, mod3, mod26 +T, ok, no, no, no, no',
  ),
  row(
    31,
    'Medium or wide-stile aluminum, deadlatch',
    all(hinged, mediumOrWide, is('latch', 'deadlatch', 'hookbolt')),
    'no, mod11, no, ok, mod1, mod2, mod3 +T, no, no, no, mod12, mod26 +T, ok, no, no, ok +T, no',
  ),
  row(
    32,
    'Framed leaf, push/pull, no latch',
    all(
      hinged,
      not(any(glass, narrow)),
      not(is('leafMaterial', 'gateFramed', 'chainLink', 'rollingSteel', 'glazedFireAssembly')),
      noLatch,
    ),
    'no21, no21, no21, ok22, mod1 mod22, mod2 mod22, mod3 +T, mod3 +T, no21, no21, mod3, mod26 +T, ok22, no, no, no21, no',
  ),
  row(
    42,
    'Narrow-stile aluminum, push/pull, no latch',
    all(hinged, narrow, noLatch),
    'no21, no21, no21, ok22, mod1 mod22, mod2 mod22, no, no, no21, no21, no, mod26 +T, ok22, no, no, mod32 +T, no',
  ),
  row(
    33,
    'Pair, rim device on one leaf, rods on the other',
    all(pair, any(metalLeaf, woodLeaf, narrow, mediumOrWide), is('latch', 'rimPlusRods')),
    'no, no, mod23 +T, ok x2, mod1, ask, no, no, ok +T, ok +T, mod6, ok +T, ok x2, no, no, no, no',
  ),
  row(
    34,
    'Wood pair, mortise lock and bolts',
    all(pair, woodLeaf, is('latch', 'mortise', 'mortiseDeadbolt', 'bored')),
    'mod7, no, no, ok, mod1, ask, ok +T, mod4, no, no, ok, mod26 +T x2, mod27 x2, no, no, no, no',
  ),
  row(
    35,
    'Bored latch and a separate deadbolt',
    all(
      hinged,
      any(metalLeaf, woodLeaf, is('leafMaterial', 'woodHollowCore')),
      is('latch', 'boredPlusDeadbolt'),
    ),
    'no, mod24, no, mod24, mod1 mod24, no, mod3 +T, mod24 +T, no, no, mod24, mod26 +T, mod27, no, no, no, no',
  ),
  row(
    36,
    'Automatic sliding door',
    is('doorType', 'slidingAutomatic'),
    'no, no, no, mod25, no, mod25, no, no, no, no, no, no, no, no, no, no, no',
  ),
  row(
    37,
    'Frameless glass pair, patch fittings',
    all(pair, glass, is('latch', 'patch', 'pushPull')),
    'no, no, no, mod13 x2, mod13 x2, mod14, no, no, no, no, mod15, no, mod13 x2, ok, mod29, no, no',
  ),
  row(
    38,
    'Turnstile, revolving or folding door',
    is('doorType', 'turnstile', 'turnstileFull', 'turnstileSecurity', 'revolving', 'folding'),
    'no, no, no, no, no, no, no, no, no, no, no, no, no, no, no, no, no',
  ),
  row(
    39,
    'Deadbolt only',
    all(hinged, any(metalLeaf, woodLeaf, is('leafMaterial', 'woodHollowCore')), is('latch', 'deadboltOnly')),
    'no, no, no, mod24, mod1 mod24, no, mod3 +T, mod3 +T, no, no, mod3, mod26 +T, mod27, no, no, no, no',
  ),
  row(
    40,
    'Fire-resistive glazed assembly',
    all(hinged, is('leafMaterial', 'glazedFireAssembly')),
    'list31, list31, list31, list31, list31, no, list31 +T, list31 +T, list31 +T, list31 +T, list31, list31 +T, list31, no, no, no, no',
  ),
];

const mechanicalCell: Cell = { verdict: 'ok', notes: [], transfer: false, both: false };
/** Leaves that an operator may move: its package brings the lock and takes the reader. */
const moved: readonly number[] = [24, 36];
const operatorCell: Cell = { verdict: 'mod', notes: [34], transfer: false, both: false };
const noCell: Cell = { verdict: 'no', notes: [], transfer: false, both: false };
const detentionCell: Cell = { verdict: 'ask', notes: [], transfer: false, both: false };

export function fitCell(fitRow: FitRow, device: DeviceId): Cell {
  const column = columnOf[device];
  if (column === 'mechanicalLock') return mechanicalCell;
  if (column === 'detentionLock') return detentionCell;
  if (column === 'operatorControl') return moved.includes(fitRow.row) ? operatorCell : noCell;
  return fitRow.cells[column];
}

/** On a rated door (row 22 of the trade table): devices that can never serve as, or beside, its latch. */
export const neverOnRatedDoor: readonly DeviceId[] = [
  'boltSolenoid',
  'boltMotor',
  'glassPatchLock',
  'glassRailExit',
  'narrowStileLatch',
  'gateLock',
];
