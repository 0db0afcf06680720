/**
 * The kinds of locking device the trade installs. Figures are defaults that a project may change; where no
 * source is named they are common practice.
 */
export type DeviceFamily = 'strike' | 'magnet' | 'bolt' | 'lock' | 'exitDevice' | 'delayed' | 'battery' | 'mechanical' | 'detention';
export type FailMode = 'safe' | 'secure' | 'asIs' | 'none';

export interface Device {
  readonly name: string;
  readonly family: DeviceFamily;
  /** Fails this way when lock power is lost; `asIs` stays as it was, `none` has no power. */
  readonly failModes: readonly FailMode[];
  readonly wired: boolean;
  /** A bolt holds the leaf shut without power, also while the outside is unlocked. */
  readonly keepsLatch: boolean;
  /** The device itself, or the lockset it works with, lets people out by one mechanical motion. */
  readonly freeEgress: boolean;
  /** Is, or works only behind, a push bar or pad. */
  readonly exitDevice: boolean;
  /** The wire must cross the hinge line. */
  readonly transfer: boolean;
  /** Steady amperes at 24 V DC while energised, upper end of the usual range. */
  readonly steadyA24: number;
  readonly inrushA24: number;
  /** Energised all day while locked (fail safe) or only on release (fail secure). */
  readonly holdsWith: 'power' | 'nothing';
  /** Default static strength of the device itself, lbf. Common practice; makers' figures are typed in. */
  readonly strengthLbf: number;
  /** Hours of labour at a prepared opening, common practice, no source. */
  readonly labourH: number;
  /** Relative installed cost, 1 (least) to 10. Common practice, no source. */
  readonly costRank: number;
  /** Opening cycles it is commonly graded for, in thousands. */
  readonly cyclesK: number;
  /** How little of it shows, 0 (bulky) to 10 (hidden). */
  readonly discreet: number;
}

export const devices = {
  strikeMortise: {
    name: 'Electric strike for a mortise latch',
    family: 'strike', failModes: ['secure', 'safe'], wired: true, keepsLatch: false, freeEgress: true,
    exitDevice: false, transfer: false, steadyA24: 0.3, inrushA24: 1, holdsWith: 'nothing',
    strengthLbf: 1500, labourH: 1.5, costRank: 3, cyclesK: 500, discreet: 8,
  },
  strikeCylindrical: {
    name: 'Electric strike for a cylindrical latch',
    family: 'strike', failModes: ['secure', 'safe'], wired: true, keepsLatch: false, freeEgress: true,
    exitDevice: false, transfer: false, steadyA24: 0.3, inrushA24: 1, holdsWith: 'nothing',
    strengthLbf: 1500, labourH: 1.5, costRank: 3, cyclesK: 500, discreet: 8,
  },
  strikeRim: {
    name: 'Electric strike for a rim exit device',
    family: 'strike', failModes: ['secure', 'safe'], wired: true, keepsLatch: false, freeEgress: true,
    exitDevice: true, transfer: false, steadyA24: 0.3, inrushA24: 1, holdsWith: 'nothing',
    strengthLbf: 1500, labourH: 1.25, costRank: 3, cyclesK: 500, discreet: 5,
  },
  magnet: {
    name: 'Electromagnetic lock',
    family: 'magnet', failModes: ['safe'], wired: true, keepsLatch: false, freeEgress: false,
    exitDevice: false, transfer: false, steadyA24: 0.5, inrushA24: 0.5, holdsWith: 'power',
    strengthLbf: 1200, labourH: 2, costRank: 4, cyclesK: 1000, discreet: 2,
  },
  shearMagnet: {
    name: 'Shear magnetic lock',
    family: 'magnet', failModes: ['safe'], wired: true, keepsLatch: false, freeEgress: false,
    exitDevice: false, transfer: false, steadyA24: 0.8, inrushA24: 1, holdsWith: 'power',
    strengthLbf: 2000, labourH: 4, costRank: 7, cyclesK: 500, discreet: 9,
  },
  boltSolenoid: {
    name: 'Electric bolt, solenoid',
    family: 'bolt', failModes: ['safe', 'secure'], wired: true, keepsLatch: false, freeEgress: false,
    exitDevice: false, transfer: false, steadyA24: 0.9, inrushA24: 2.7, holdsWith: 'power',
    strengthLbf: 1500, labourH: 3, costRank: 5, cyclesK: 250, discreet: 8,
  },
  boltMotor: {
    name: 'Electric bolt, motor',
    family: 'bolt', failModes: ['safe', 'secure'], wired: true, keepsLatch: false, freeEgress: false,
    exitDevice: false, transfer: false, steadyA24: 0.6, inrushA24: 0.6, holdsWith: 'nothing',
    strengthLbf: 1500, labourH: 3, costRank: 6, cyclesK: 250, discreet: 8,
  },
  mortiseLock: {
    name: 'Electrified mortise lock',
    family: 'lock', failModes: ['secure', 'safe'], wired: true, keepsLatch: true, freeEgress: true,
    exitDevice: false, transfer: true, steadyA24: 0.5, inrushA24: 1, holdsWith: 'nothing',
    strengthLbf: 1250, labourH: 2.5, costRank: 6, cyclesK: 1000, discreet: 10,
  },
  cylindricalLock: {
    name: 'Electrified cylindrical lock',
    family: 'lock', failModes: ['secure', 'safe'], wired: true, keepsLatch: true, freeEgress: true,
    exitDevice: false, transfer: true, steadyA24: 0.4, inrushA24: 1, holdsWith: 'nothing',
    strengthLbf: 800, labourH: 2.5, costRank: 5, cyclesK: 1000, discreet: 10,
  },
  exitTrim: {
    name: 'Electrified exit-device trim',
    family: 'exitDevice', failModes: ['secure', 'safe'], wired: true, keepsLatch: true, freeEgress: true,
    exitDevice: true, transfer: true, steadyA24: 0.4, inrushA24: 1, holdsWith: 'nothing',
    strengthLbf: 800, labourH: 2.5, costRank: 6, cyclesK: 500, discreet: 8,
  },
  latchRetractionMotor: {
    name: 'Electric latch retraction, motor',
    family: 'exitDevice', failModes: ['secure'], wired: true, keepsLatch: false, freeEgress: true,
    exitDevice: true, transfer: true, steadyA24: 0.3, inrushA24: 1.5, holdsWith: 'nothing',
    strengthLbf: 800, labourH: 3, costRank: 8, cyclesK: 500, discreet: 9,
  },
  latchRetractionSolenoid: {
    name: 'Electric latch retraction, solenoid',
    family: 'exitDevice', failModes: ['secure'], wired: true, keepsLatch: false, freeEgress: true,
    exitDevice: true, transfer: true, steadyA24: 1, inrushA24: 16, holdsWith: 'nothing',
    strengthLbf: 800, labourH: 3.5, costRank: 8, cyclesK: 500, discreet: 9,
  },
  delayedExitDevice: {
    name: 'Delayed-egress exit device',
    family: 'delayed', failModes: ['safe'], wired: true, keepsLatch: true, freeEgress: false,
    exitDevice: true, transfer: true, steadyA24: 0.8, inrushA24: 1, holdsWith: 'power',
    strengthLbf: 800, labourH: 4, costRank: 9, cyclesK: 500, discreet: 6,
  },
  delayedMagnet: {
    name: 'Delayed-egress magnet',
    family: 'delayed', failModes: ['safe'], wired: true, keepsLatch: false, freeEgress: false,
    exitDevice: false, transfer: false, steadyA24: 0.8, inrushA24: 0.8, holdsWith: 'power',
    strengthLbf: 1200, labourH: 3, costRank: 8, cyclesK: 1000, discreet: 2,
  },
  glassPatchLock: {
    name: 'Electrified patch, header or floor lock for glass',
    family: 'bolt', failModes: ['safe', 'secure'], wired: true, keepsLatch: false, freeEgress: false,
    exitDevice: false, transfer: false, steadyA24: 0.6, inrushA24: 1.8, holdsWith: 'power',
    strengthLbf: 600, labourH: 4, costRank: 7, cyclesK: 250, discreet: 9,
  },
  glassRailExit: {
    name: 'Rail exit device for glass, electric release',
    family: 'exitDevice', failModes: ['secure'], wired: true, keepsLatch: true, freeEgress: true,
    exitDevice: true, transfer: false, steadyA24: 0.5, inrushA24: 1, holdsWith: 'nothing',
    strengthLbf: 600, labourH: 4, costRank: 9, cyclesK: 500, discreet: 6,
  },
  narrowStileLatch: {
    name: 'Electrified narrow-stile latch',
    family: 'lock', failModes: ['secure', 'safe'], wired: true, keepsLatch: true, freeEgress: true,
    exitDevice: false, transfer: true, steadyA24: 0.5, inrushA24: 1, holdsWith: 'nothing',
    strengthLbf: 600, labourH: 2.5, costRank: 5, cyclesK: 250, discreet: 9,
  },
  gateLock: {
    name: 'Electrified gate lock',
    family: 'lock', failModes: ['secure', 'safe'], wired: true, keepsLatch: true, freeEgress: true,
    exitDevice: false, transfer: false, steadyA24: 0.8, inrushA24: 2.4, holdsWith: 'nothing',
    strengthLbf: 1000, labourH: 3, costRank: 6, cyclesK: 250, discreet: 5,
  },
  batteryLock: {
    name: 'Battery-powered lockset',
    family: 'battery', failModes: ['asIs'], wired: false, keepsLatch: true, freeEgress: true,
    exitDevice: false, transfer: false, steadyA24: 0, inrushA24: 0, holdsWith: 'nothing',
    strengthLbf: 800, labourH: 1, costRank: 4, cyclesK: 400, discreet: 7,
  },
  mechanicalLock: {
    name: 'Mechanical lock only',
    family: 'mechanical', failModes: ['none'], wired: false, keepsLatch: true, freeEgress: true,
    exitDevice: false, transfer: false, steadyA24: 0, inrushA24: 0, holdsWith: 'nothing',
    strengthLbf: 1000, labourH: 0.75, costRank: 1, cyclesK: 1000, discreet: 10,
  },
  detentionLock: {
    name: 'Detention lock',
    family: 'detention', failModes: ['none'], wired: true, keepsLatch: true, freeEgress: false,
    exitDevice: false, transfer: false, steadyA24: 0, inrushA24: 0, holdsWith: 'nothing',
    strengthLbf: 2000, labourH: 8, costRank: 10, cyclesK: 500, discreet: 5,
  },
} as const satisfies Record<string, Device>;

export type DeviceId = keyof typeof devices;
export const deviceIds = Object.keys(devices) as readonly DeviceId[];
export function device(id: DeviceId): Device {
  return devices[id];
}
