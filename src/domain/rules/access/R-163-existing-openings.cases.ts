import { cases } from '../rule.ts';

const plainDoor = {
  workStatus: 'existing',
  doorType: 'single',
  egressRole: 'exitAccess',
  fireRatingMin: 0,
  wallRatingMin: 0,
  fireLabel: 'none',
  closing: 'selfClosing',
  latch: 'mortise',
  panicPresent: false,
  inactiveBolts: 'none',
  occupancyGroup: 'B',
  roomUse: 'office',
  occupantLoad: 12,
} as const;

const fireDoor = { ...plainDoor, fireRatingMin: 45, fireLabel: 'seen' } as const;

const hallDoor = { ...plainDoor, occupancyGroup: 'A-3', occupantLoad: 120 } as const;

export const R163Cases = cases(
  ['untouched and as new work would be', plainDoor, 'no'],
  ['rated door that nothing closes', { ...fireDoor, closing: 'none' }, 'yes', { does: 'signOff note' }],
  ['rated door with push and pull', { ...fireDoor, latch: 'pushPull' }, 'yes'],
  ['rated door with a roller latch', { ...fireDoor, latch: 'roller' }, 'yes'],
  ['rated door without a label', { ...fireDoor, fireLabel: 'none' }, 'yes'],
  ['rated pair with hand bolts', { ...fireDoor, inactiveBolts: 'manualFlush' }, 'yes'],
  ['rated pair with automatic bolts', { ...fireDoor, inactiveBolts: 'automaticFlush' }, 'no'],
  ['unrated door that nothing closes', { ...plainDoor, closing: 'none' }, 'no'],
  ['unrated pair with hand bolts', { ...plainDoor, inactiveBolts: 'manualFlush' }, 'no'],
  ['hall with a lever', hallDoor, 'yes'],
  ['hall with a bar', { ...hallDoor, latch: 'rimExit', panicPresent: true }, 'no'],
  ['just under 32 in clear', { ...plainDoor, clearWidthIn: 31.9375 }, 'yes'],
  ['32 in clear', { ...plainDoor, clearWidthIn: 32 }, 'no'],
  ['being altered', { ...fireDoor, closing: 'none', workStatus: 'altered' }, 'no'],
  ['new', { ...fireDoor, closing: 'none', workStatus: 'new' }, 'no'],
  ['old or new not asked', { fireRatingMin: 45, closing: 'none' }, 'unknown'],
  ['rated, closing not surveyed', { workStatus: 'existing', fireRatingMin: 45 }, 'unknown'],
);
