import { failModeWords } from '../../domain/words/arrangement.ts';
import { stateWords } from '../../domain/words/states.ts';
import { type Release, releases } from '../../domain/devices/candidates.ts';
import type { FailMode } from '../../domain/devices/devices.ts';
import { dashed, type FaceSymbol, heavy, line, ring, type SymbolStroke, solid } from './symbol.ts';

const symbol = (word: string, meaning: string, ...strokes: readonly SymbolStroke[]): FaceSymbol => ({
  word,
  meaning,
  strokes,
});

// ── Parts that several symbols share ────────────────────────────────────────────────────────────────────

/** A keeper on the right that a bolt enters from the left. */
const keeper = (top: number): SymbolStroke =>
  line(`M16 ${top}H22V${top + 11}H16V${top + 9.5}M16 ${top}V${top + 1.5}`);
/** The bolt, thrown into the keeper, or drawn back out of it. */
const thrown = (top: number): SymbolStroke => solid(`M2 ${top + 3}H20V${top + 8}H2Z`);
const drawnBack = (top: number): SymbolStroke => line(`M2 ${top + 3}H10V${top + 8}H2Z`);
/** A supply wire that has been cut. */
const cutWire = [line('M2 4.5H8.5M15.5 4.5H22'), line('M8 7.5L11 1.5M13 7.5L16 1.5')];
/** A wall in plan with the doorway in it; people leave from left to right. */
const doorway = heavy('M15 1V6.5M15 17.5V23');
const wayOut = line('M2 12H21M17 8L21.5 12L17 16');
const person = (x: number, y: number): readonly SymbolStroke[] => [
  solid(ring(x, y, 2.75)),
  line(`M${x - 5} ${y + 10}V${y + 8.5}A5 4.5 0 0 1 ${x + 5} ${y + 8.5}V${y + 10}`),
];
/** A sounder under the ceiling, ringing. */
const sounder = [
  heavy('M1 3H23'),
  solid('M6 4.5A6 7 0 0 0 18 4.5Z'),
  line('M6 14.5A8 8 0 0 0 18 14.5M3 18A12 12 0 0 0 21 18'),
];
const waiting = (x: number, y: number, r: number): readonly SymbolStroke[] => {
  const end = [x + r * 0.87, y + r * 0.5].map((n) => Number(n.toFixed(2))).join(' ');
  return [line(ring(x, y, r)), solid(`M${x} ${y}V${y - r}A${r} ${r} 0 0 1 ${end}Z`)];
};

// ── What the secure side does when lock power is lost ───────────────────────────────────────────────────

export const failModeSymbols: Readonly<Record<FailMode, FaceSymbol>> = {
  safe: symbol(
    failModeWords.safe,
    'Wire cut, bolt drawn back: unlocked from the secure side',
    ...cutWire,
    keeper(11),
    drawnBack(11),
  ),
  secure: symbol(
    failModeWords.secure,
    'Wire cut, bolt thrown: locked from the secure side',
    ...cutWire,
    keeper(11),
    thrown(11),
  ),
  asIs: symbol(
    failModeWords.asIs,
    'Wire cut, bolt where it was left',
    ...cutWire,
    keeper(11),
    drawnBack(11),
    dashed('M10 14H20V19H10'),
  ),
  none: symbol(failModeWords.none, 'No wire: a bolt moved by hand', keeper(6.5), line('M2 9.5H20V14.5H2Z')),
};

// ── How a person leaving gets out ───────────────────────────────────────────────────────────────────────

export const releaseSymbols: Readonly<Record<Release, FaceSymbol>> = {
  free: symbol(releases.free, 'The egress path passes through', doorway, wayOut),
  stairReentry: symbol(
    releases.stairReentry,
    'Steps of the stair, out and back in on command',
    line('M1 22.5H8V17.5H13V12.5H18V7.5H23'),
    line('M1.5 3H11M8 0.5L11 3L8 5.5'),
    line('M11 9.5H1.5M4.5 7L1.5 9.5L4.5 12'),
  ),
  doorSwitch: symbol(
    releases.doorSwitch,
    'A bar that opens a contact',
    line('M1.5 2.5H22.5V7.5H1.5Z'),
    line('M13 7.5V12M1.5 18.5H7M17 18.5H22.5'),
    solid(ring(7, 18.5, 2)),
    solid(ring(17, 18.5, 2)),
    heavy('M7 18.5L16.5 12'),
  ),
  sensor: symbol(
    releases.sensor,
    'Field of a sensor from above, and a button',
    solid('M7 1H17V5H7Z'),
    line('M9 6.5L3 17M15 6.5L21 17'),
    line('M6.5 12.5A9 9 0 0 0 17.5 12.5'),
    solid(ring(12, 20, 3)),
  ),
  delayed: symbol(
    releases.delayed,
    'A delay before egress',
    ...waiting(7.5, 12, 6),
    heavy('M17 1V7M17 17V23'),
    line('M14 12H22M19 9L22 12L19 15'),
  ),
  controlled: symbol(
    releases.controlled,
    'A person opens by remote switch',
    ...person(8, 5),
    line('M1 19H23'),
    line('M16 12V19M16 12H22V19'),
    solid(ring(19, 15.5, 1.4)),
  ),
  clinical: symbol(
    releases.clinical,
    'Care, and a key carried by staff',
    line('M5 2H10V6.5H14.5V11.5H10V16H5V11.5H0.75V6.5H5Z'),
    line(ring(15, 18.5, 3)),
    line('M18 18.5H23.25V21.5M21 18.5V21'),
  ),
  lobby: symbol(
    releases.lobby,
    'Elevator with its two arrows, and egress',
    line('M2 2H13V22H2Z'),
    solid('M7.5 4.5L10.5 9.5H4.5ZM7.5 19.5L10.5 14.5H4.5Z'),
    line('M15 12H22M18.5 8L22.5 12L18.5 16'),
  ),
  keyInside: symbol(
    releases.keyInside,
    'A key',
    line(ring(6.5, 12, 4.75)),
    line('M11.25 12H22.5V16.5M18 12V15.5'),
    solid(ring(5.5, 12, 1.3)),
  ),
  credentialOut: symbol(
    releases.credentialOut,
    'A card and its reader',
    line('M1.5 6H13.5V18H1.5Z'),
    solid('M1.5 9H13.5V12H1.5Z'),
    line('M16.5 8.5A6 6 0 0 1 16.5 15.5M19.5 5.5A11 11 0 0 1 19.5 18.5'),
  ),
  buttonOnly: symbol(
    releases.buttonOnly,
    'A button on a plate',
    line('M4 2H20V22H4Z'),
    solid(ring(12, 12, 4.25)),
  ),
  alarmOnly: symbol(releases.alarmOnly, 'A sounder, nothing by hand', ...sounder),
  attended: symbol(
    releases.attended,
    'A person behind bars of a post',
    ...person(12, 6),
    line('M2.5 2V22M21.5 2V22'),
    line('M1 20H23'),
  ),
  none: symbol(
    releases.none,
    'The egress path ends at the wall',
    heavy('M17 1V23'),
    line('M2 12H14M10 8L14 12L10 16'),
    solid('M18.5 1H22V23H18.5Z'),
  ),
};

// ── What happens when: the state of one side in one condition ───────────────────────────────────────────

export const stateSymbols = {
  locked: symbol('Locked', 'Bolt thrown into its keeper', keeper(6.5), thrown(6.5)),
  unlocked: symbol('Unlocked', 'Bolt drawn back', keeper(6.5), drawnBack(6.5)),
  free: symbol('Free', 'The egress path passes through', doorway, wayOut),
  delayed: symbol(
    'Delayed',
    'Free after a waiting time',
    ...waiting(7.5, 12, 6),
    heavy('M17 1V7M17 17V23'),
    line('M14 12H22M19 9L22 12L19 15'),
  ),
  byStaff: symbol(
    'By staff',
    'A person has to open',
    ...person(8, 7),
    heavy('M17 1V7M17 17V23'),
    line('M14 12H22M19 9L22 12L19 15'),
  ),
  blocked: symbol(
    'Blocked',
    'The egress path ends at the wall',
    heavy('M17 1V23'),
    line('M2 12H14M10 8L14 12L10 16'),
    solid('M18.5 1H22V23H18.5Z'),
  ),
  latched: symbol('Latched', 'Beveled latch in its keeper', keeper(6.5), solid('M2 8.5H14L20 13.5V15.5H2Z')),
  notLatched: symbol(
    'Not latched',
    'Beveled latch out of its keeper',
    keeper(6.5),
    line('M2 8.5H6L11.5 13.5V15.5H2Z'),
  ),
  energized: symbol(
    'Energized',
    'A coil that draws current',
    line('M1 12H6M18 12H23'),
    solid('M5.5 8.5H18.5V15.5H5.5Z'),
    line('M8 6V2.5M12 6V1M16 6V2.5M8 18V21.5M12 18V23M16 18V21.5'),
  ),
  alarm: symbol('Alarm', 'A sounder', ...sounder),
} satisfies Record<string, FaceSymbol>;
export type StateWord = keyof typeof stateSymbols;

// ── Standing of a decision or of a fact ─────────────────────────────────────────────────────────────────

export const statusSymbols = {
  settled: symbol(
    'Settled',
    'Disc in a ring: no open fact can change it',
    line(ring(12, 12, 10)),
    solid(ring(12, 12, 6.75)),
  ),
  provisional: symbol(
    'Provisional',
    'Half a disc: an open fact could change it',
    line(ring(12, 12, 10)),
    solid('M12 5.25A6.75 6.75 0 0 0 12 18.75Z'),
  ),
  refused: symbol(
    'Refused',
    'Crossed box: a rule forbids it',
    line('M3 3H21V21H3Z'),
    heavy('M3 3L21 21M21 3L3 21'),
  ),
  needsSignOff: symbol(
    'Needs sign-off',
    'Cross and empty line: sign here',
    line('M2 20H22'),
    line('M3 10L8 16M8 10L3 16'),
    heavy('M12 16L20.5 4.5'),
  ),
  signedOff: symbol(
    'Signed off',
    'A line with a signature',
    line('M2 20H22'),
    line(
      'M3 14C6 2 9 2 8 9C7 16 5 17 7 12C9 8 11 8 11 12C11 16 14 9 15 10C16 11 15 15 18 14C20 13 21 11 22 10',
    ),
  ),
  stale: symbol(
    'Stale',
    'Revision cloud: the opening changed since',
    line(
      'M6 18.5A4 4 0 0 1 3.4 12A4 4 0 0 1 6.6 6.2A4.4 4.4 0 0 1 13 4.4A4.2 4.2 0 0 1 19.2 7.6A4 4 0 0 1 20.4 14A3.8 3.8 0 0 1 16.8 18.6A4 4 0 0 1 11.4 19.8A4 4 0 0 1 6 18.5Z',
    ),
  ),
  notSurveyed: symbol(
    'Not surveyed',
    'Dashed box: nobody looked yet',
    dashed('M3 3H21V21H3Z'),
    line('M8.5 9.5A3.5 3.5 0 1 1 12 13V14.5'),
    solid(ring(12, 17.5, 1.3)),
  ),
  assumed: symbol(
    'Assumed',
    'Dashed circle: a default, not seen',
    dashed(ring(12, 12, 9)),
    line('M7.5 12.5C9 10 10.5 10 12 12S15 14 16.5 11.5'),
  ),
  caution: symbol(
    'Caution',
    'Triangle: read the remark',
    line('M12 2.5L22.5 21H1.5Z'),
    heavy('M12 9V14.5'),
    solid(ring(12, 17.6, 1.3)),
  ),
  error: symbol(
    'Error',
    'Solid triangle: must be put right',
    solid('M12 1L23.5 22H0.5ZM10.75 8.5V15H13.25V8.5ZM10.75 17H13.25V19.5H10.75Z'),
  ),
  nothingFits: symbol(
    stateWords.none.word,
    'Empty lozenge: no device survives the rules',
    line('M12 1.5L22.5 12L12 22.5L1.5 12Z'),
  ),
  leftAsItIs: symbol(
    stateWords.left.word,
    'Ring with a dash: nothing is wanted and nothing is bought',
    line(ring(12, 12, 10)),
    heavy('M7 12H17'),
  ),
} satisfies Record<string, FaceSymbol>;
export type StatusWord = keyof typeof statusSymbols;
