import { type DeviceId, devices } from '../../domain/devices/devices.ts';
import { type FaceSymbol, heavy, line, ring, type SymbolStroke, solid, thin } from './symbol.ts';

/**
 * Each device is a small drawing of the place where it sits: the lock edge of a leaf beside its frame, the
 * head of the frame, or the face of the leaf. One convention reads them all: what is inked solid is the
 * electrified part. A mechanical lock has nothing solid.
 */
const leafEdge = line('M1.5 3H13V21H1.5');
const jamb = line('M18.5 2V22M22.5 2V22');
/** The head of the frame with the upper part of the leaf below it. */
const head = heavy('M1 3H23');
const leafTop = line('M3 23V15H21V23');
const glassLeaf = [line('M4 2H20V22H4Z'), thin('M8 10L12 6M8 14L15 7')];
/** The push bar across the leaf, with its case at the lock edge. */
const bar = [line('M1.5 10H12V15H1.5'), line('M12 8H16.5V17H12Z')];

/** A clock with the waiting time inked in: the sector from noon to four. */
const delay = (x: number, y: number, r: number): readonly SymbolStroke[] => {
  const end = [x + r * 0.87, y + r * 0.5].map((n) => Number(n.toFixed(2))).join(' ');
  return [line(ring(x, y, r)), solid(`M${x} ${y}V${y - r}A${r} ${r} 0 0 1 ${end}Z`)];
};

const strokes: Record<DeviceId, readonly SymbolStroke[]> = {
  // The strike is in the frame, so the frame is inked; the latch tells which lock it works with.
  strikeMortise: [
    leafEdge,
    line('M8 6.5H13V17.5H8Z'),
    heavy('M13 12H18'),
    line('M22.5 2V22M18.5 2V5M18.5 19V22'),
    solid('M17.5 5H23.5V19H17.5V14.5H20V9.5H17.5Z'),
  ],
  strikeCylindrical: [
    leafEdge,
    line(ring(7, 12, 3.25)),
    heavy('M10 12H18'),
    line('M22.5 2V22M18.5 2V8M18.5 16V22'),
    solid('M17.5 7.5H23.5V16.5H17.5V14H20V10H17.5Z'),
  ],
  strikeRim: [
    line('M1.5 3H14V21H1.5'),
    line('M1.5 9.5H8V14.5H1.5M8 7.5H14V16.5H8Z'),
    line('M22.5 2V22M18.5 2V6M18.5 18V22'),
    solid('M23.5 6H17L14.5 8.5V15.5L17 18H23.5V15H18.5V9H23.5Z'),
  ],
  // Magnets hang under the head; the plate they hold is on the leaf.
  magnet: [head, solid('M4 4.5H20V10.5H4Z'), line('M6 13H18V15'), line('M6 15V13'), leafTop],
  shearMagnet: [
    line('M2 2H22V10.5H2Z'),
    solid('M6 4.5H18V8H6Z'),
    line('M3 23V15H21V23M8 15V12.5H16V15'),
    line('M9.5 12.5V9.5M14.5 12.5V9.5'),
  ],
  // A bolt is thrown out of the frame into the leaf: coil or motor behind it.
  boltSolenoid: [
    line('M1.5 3H7V21H1.5'),
    line('M11 2V8.5M11 15.5V22'),
    solid('M4 10H14V14H4Z'),
    line('M14 7H22.5V17H14Z'),
    thin('M16 7L14.5 17M19 7L17.5 17M22 7L20.5 17'),
  ],
  boltMotor: [
    line('M1.5 3H7V21H1.5'),
    line('M11 2V8.5M11 15.5V22'),
    solid('M4 10H14V14H4Z'),
    line(ring(18, 12, 4.5)),
    solid(ring(18, 12, 1.6)),
  ],
  // Locks sit in the leaf, so their case is inked.
  mortiseLock: [leafEdge, jamb, solid('M7 5H13V19H7Z'), heavy('M13 12H18.5'), line('M1.5 9.5H7')],
  cylindricalLock: [leafEdge, jamb, solid(ring(8, 12, 3.75)), heavy('M11 12H18.5'), line('M1.5 12H5')],
  narrowStileLatch: [
    line('M8 2V22M14 2V22'),
    heavy('M21.5 1V23'),
    solid('M9.5 4.5H12.5V19.5H9.5Z'),
    heavy('M14 12H20'),
    thin('M1.5 9L5.5 5M1.5 17L5.5 13'),
  ],
  gateLock: [
    line('M2 2V22M6 2V22'),
    line('M1 5H9M1 19H9'),
    solid('M8.5 7H17V17H8.5Z'),
    heavy('M17 12H20'),
    heavy('M21.5 1V23'),
  ],
  batteryLock: [
    line('M3 2H13V22H3Z'),
    line('M8 9.5H20.5'),
    line(ring(8, 9.5, 0.9)),
    line('M17 14.5H22.5V22.5H17Z'),
    solid('M18.75 12.5H20.75V14.5H18.75Z'),
    solid('M18 17.5H21.5V21.5H18Z'),
    thin('M6 18H10M6 5H10'),
  ],
  mechanicalLock: [
    line('M4 2H13V22H4Z'),
    line('M8.5 8H21.5V10.5'),
    line(ring(8.5, 16, 2.25)),
    line('M8.5 18.25V20'),
  ],
  // A push plate and a pull, and nothing that reaches the frame.
  noLock: [line('M4 2H13V22H4Z'), line('M7 7H10V12H7Z'), line('M18 6V18M15 6H18M15 18H18')],
  // The box of the operator over a sliding leaf, inked where the reader comes in.
  operatorControl: [
    line('M1.5 3H22.5V9H1.5Z'),
    solid('M4 4.5H11V7.5H4Z'),
    line('M3 9V22H13V9'),
    heavy('M15 15H22M19 12L22 15L19 18'),
  ],
  detentionLock: [
    heavy('M3 1V23M8 1V23M21.5 1V23'),
    line('M8 6H18V18H8Z'),
    line(ring(13, 10.5, 1.75)),
    line('M13 12.5V16'),
    line('M18 12H21'),
  ],
  // Exit devices: the bar across the leaf; what is electrified decides what is solid.
  exitTrim: [
    line('M9.5 1V23M13.5 1V23'),
    line('M9.5 7H3.5V12H9.5'),
    solid('M13.5 5H16.5V19H13.5Z'),
    heavy('M16 10H22V14'),
  ],
  latchRetractionMotor: [
    ...bar,
    line('M22 2V22'),
    solid('M16.5 12.5L20.5 8.5V11H23V14H20.5V16.5Z'),
    line(ring(6, 12.5, 0.5)),
    line(ring(7, 20, 2.6)),
    solid(ring(7, 20, 1)),
  ],
  latchRetractionSolenoid: [
    ...bar,
    line('M22 2V22'),
    solid('M16.5 12.5L20.5 8.5V11H23V14H20.5V16.5Z'),
    thin('M3 18H12V23H3ZM5.5 18L4.5 23M8 18L7 23M10.5 18L9.5 23'),
  ],
  delayedExitDevice: [line('M1.5 14H17V19.5H1.5'), line('M17 12H21V21.5H17Z'), ...delay(9, 6.5, 5)],
  delayedMagnet: [
    head,
    solid('M2 4.5H22V9H2Z'),
    line('M3.5 23V12H7'),
    line('M17 12H20.5V23'),
    ...delay(12, 16.5, 5),
  ],
  // Glass: two glints, and a fitting where the lock is.
  glassPatchLock: [...glassLeaf, solid('M12 15.5H21V23H12Z')],
  glassRailExit: [
    line('M4 2H20V22H4Z'),
    solid('M3 1H21V5.5H3Z'),
    heavy('M16 5V13H6'),
    thin('M7.5 20L11 16.5M11 20L15.5 16'),
  ],
};

const meanings: Record<DeviceId, string> = {
  strikeMortise: 'Inked part in the frame, latch of a mortise case',
  strikeCylindrical: 'Inked part in the frame, latch of a bored lock',
  strikeRim: 'Inked keeper on the frame, case on the leaf',
  magnet: 'Inked block under the head, plate on the leaf',
  shearMagnet: 'Inked block inside the head, plate rising into it',
  boltSolenoid: 'Inked bolt out of the frame, coil behind it',
  boltMotor: 'Inked bolt out of the frame, motor behind it',
  mortiseLock: 'Inked case in the edge of the leaf',
  cylindricalLock: 'Inked bore in the leaf',
  exitTrim: 'Leaf from its edge: push bar, inked lever on the secure side',
  latchRetractionMotor: 'Bar pulls its latch back, motor below',
  latchRetractionSolenoid: 'Bar pulls its latch back, coil below',
  delayedExitDevice: 'Push bar with a waiting time',
  delayedMagnet: 'Magnet at the head with a waiting time',
  glassPatchLock: 'Glass leaf, inked fitting at its corner',
  glassRailExit: 'Glass leaf, inked rail, handle bar',
  narrowStileLatch: 'Narrow stile beside glass, inked case',
  gateLock: 'Gate bars, inked lock at the post',
  batteryLock: 'Lever plate with a battery',
  mechanicalLock: 'Lever and cylinder, nothing inked: no power',
  operatorControl: 'Box of an operator over the leaf it moves, inked input',
  detentionLock: 'Bars and a lock keyed by staff',
  noLock: 'Push plate and pull: nothing locks it',
};

export const deviceSymbols = Object.fromEntries(
  Object.entries(strokes).map(([id, drawn]) => [
    id,
    { word: devices[id as DeviceId].name, meaning: meanings[id as DeviceId], strokes: drawn },
  ]),
) as unknown as Readonly<Record<DeviceId, FaceSymbol>>;
