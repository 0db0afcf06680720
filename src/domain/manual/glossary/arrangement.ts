import { failModeWords } from '../../words/arrangement.ts';
import { type Release, releases } from '../../devices/candidates.ts';
import { type DeviceId, devices, type FailMode } from '../../devices/devices.ts';
import { type Origin, type Term, trade } from './term.ts';

const deviceSays: Record<DeviceId, string> = {
  strikeMortise: 'A keeper in the frame that releases a mortise latch while the outside lever stays locked.',
  strikeCylindrical: 'A keeper in the frame that releases the latch of a bored lock.',
  strikeRim: 'A keeper on the face of the frame that releases the latch of a rim exit device.',
  magnet: 'A coil at the head that holds a plate on the leaf by current alone; it holds, it does not latch.',
  shearMagnet: 'A magnet hidden in the head whose plate rises into it and is held sideways.',
  boltSolenoid: 'A bolt thrown into the leaf by a coil.',
  boltMotor: 'A bolt thrown into the leaf by a motor.',
  mortiseLock: 'A lock case in the edge of the leaf whose outside lever is freed by current.',
  cylindricalLock: 'A bored lock whose outside lever is freed by current.',
  exitTrim: 'The outside lever of an exit device, freed by current; the bar inside always works.',
  latchRetractionMotor: 'A motor pulls the latch of an exit device back, so that the door pushes and pulls.',
  latchRetractionSolenoid:
    'A coil pulls the latch of an exit device back, so that the door pushes and pulls.',
  delayedExitDevice: 'An exit device that opens only after a posted delay, and at once on fire alarm.',
  delayedMagnet: 'A magnet that releases only after a posted delay, and at once on fire alarm.',
  glassPatchLock: 'A lock in the fitting at the corner of a glass leaf, in its header, or in the floor.',
  glassRailExit: 'An exit device in the rail of a glass leaf, released by current.',
  narrowStileLatch: 'A latch made for the narrow stile beside glass, freed by current.',
  gateLock: 'A lock made for gates and weather, freed by current.',
  batteryLock: 'A lock with reader and battery in the leaf and no wire.',
  mechanicalLock: 'A lock operated by key and lever only.',
  operatorControl:
    'The reader goes to the control of the operator, which moves the leaf and works the lock of its own package.',
  detentionLock: 'A lock of a place of detention, worked by its staff.',
  noLock: 'The leaf is pushed and pulled and nothing locks or latches it.',
};

const deviceAlsoCalled: Partial<Record<DeviceId, string>> = {
  strikeMortise: 'door release, electric release',
  strikeCylindrical: 'door release, electric release',
  strikeRim: 'door release, electric release, surface strike',
  magnet: 'maglock, mag lock',
  shearMagnet: 'shear lock',
  boltSolenoid: 'drop bolt, solenoid bolt',
  boltMotor: 'drop bolt, motorized bolt',
  exitTrim: 'electrified trim',
  latchRetractionMotor: 'electric latch retraction, ELR',
  latchRetractionSolenoid: 'electric latch retraction, ELR',
  glassPatchLock: 'all-glass entrance lock',
  narrowStileLatch: 'storefront latch',
  batteryLock: 'wireless lock',
};

const releaseSays: Record<Release, string> = {
  free: 'Lever or bar pulls the latch back by hand, whatever power and alarm do.',
  stairReentry:
    'Free from the floor side; the stair side is freed on command, so that people can come back in.',
  doorSwitch: 'A switch in the lever or bar cuts the power of the lock.',
  sensor: 'A sensor detects a person approaching and cuts lock power; a button beside the door does too.',
  delayed: 'Pushing starts a posted delay of 15 or 30 seconds, after which the door opens.',
  controlled: 'In care, staff let people out; alarm and power loss do so as well.',
  clinical: 'A lock of a care room that staff carry the key or code of.',
  lobby: 'Doors between an elevator lobby and the stair that open on alarm, power loss and call.',
  keyInside: 'The lock is opened by key from inside, while people are there.',
  credentialOut: 'A card or code is needed to leave.',
  buttonOnly: 'A button on the wall and nothing else.',
  alarmOnly: 'Opens on fire alarm or power loss only, never by hand.',
  attended: 'Staff of a place of detention open it.',
  none: 'Nothing on the inside opens it.',
};

const releaseOrigin: Partial<Record<Release, Origin>> = {
  doorSwitch: 'standard',
  sensor: 'standard',
  delayed: 'standard',
  controlled: 'standard',
  lobby: 'standard',
};

const failModeSays: Record<FailMode, string> = {
  safe: 'Unlocked from the secure side when lock power is lost; says nothing about egress.',
  secure: 'Locked from the secure side when lock power is lost; says nothing about egress.',
  asIs: 'Keeps the state it had when its power went, as a battery lock does.',
  none: 'Uses no power, so none can be lost.',
};

export const deviceTerms: readonly Term[] = (Object.keys(deviceSays) as DeviceId[]).map((id) => ({
  ...trade(devices[id].name, deviceSays[id], deviceAlsoCalled[id]),
}));
export const releaseTerms: readonly Term[] = (Object.keys(releaseSays) as Release[]).map((id) => ({
  term: releases[id],
  says: releaseSays[id],
  origin: releaseOrigin[id] ?? 'trade',
}));
export const failModeTerms: readonly Term[] = (Object.keys(failModeSays) as FailMode[]).map((id) => ({
  term: failModeWords[id],
  says: failModeSays[id],
  origin: id === 'asIs' || id === 'none' ? 'own' : 'trade',
}));
