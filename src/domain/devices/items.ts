import type { FactKey } from '../model/fields.ts';

/** Who does the work. */
export type Trade =
  | 'locksmith'
  | 'electrician'
  | 'fireAlarm'
  | 'security'
  | 'doorSupplier'
  | 'signs'
  | 'owner';
export const trades: Record<Trade, string> = {
  locksmith: 'Locksmith',
  electrician: 'Electrician',
  fireAlarm: 'Fire-alarm contractor',
  security: 'Security contractor',
  doorSupplier: 'Door and frame supplier',
  signs: 'Sign supplier',
  owner: 'Owner',
};

/** Steps in which a set is listed, in their order. */
export const setSteps = ['hang', 'secure', 'control', 'protect', 'electrical', 'paper'] as const;
export type SetStep = (typeof setSteps)[number];

/** What a line tells of an item besides its name: facts, or what is put together from several. */
export type Told = FactKey | 'lockBody' | 'leafSize' | 'cable' | 'cutout';

export interface Item {
  readonly name: string;
  readonly trade: Trade;
  readonly step: SetStep;
  /** ANSI/BHMA or other standard it is bought to, where there is one. */
  readonly standard?: string;
  /** Bought once for several openings: one opening has a share of it. */
  readonly shared?: true;
  /** As many as there are leaves with the device, leaves with a bar, or leaves; without it one for the opening. */
  readonly per?: 'device' | 'bar' | 'leaf';
  /** Ordered left or right: openings of another hand need a set of their own. */
  readonly handed?: true;
  /** Applied to other items, whatever else stands in the set: no piece of its own. */
  readonly quality?: true;
  /** What is done at the opening, or again and again for as long as it stands; without it goods that are bought. */
  readonly block?: 'work' | 'duty';
  /** Put on single openings beside what their set consists of: by label, leaf or place, so no reason for another set. */
  readonly addition?: true;
  /** Ordered by the voltage that feeds it: 12 V and 24 V are two part numbers. */
  readonly electrified?: true;
  /** Takes a key, so it is ordered by a key set. */
  readonly keyed?: true;
  /** Exposed metal that is ordered in a finish. */
  readonly finished?: true;
  /** Section of the specification where it is not the usual one of its trade. */
  readonly section?: Section;
  /** Locks the leaf by lever or key; carries a push bar of its own. */
  readonly kind?: 'lockset' | 'bar';
  /** Latches the leaf, so what only asks for a latch finds it here. */
  readonly latches?: true;
  /** A line that says more takes the place of this plainer one. */
  readonly standsInFor?: string;
  /** Ordered by the same part number as the plainer piece. Common practice, no source. */
  readonly samePartAs?: string;
  /**
   * Asks something of another line and is no piece of its own beside it: one of these, any lockset, whatever latches,
   * or a bar that comes with the lock on each leaf.
   */
  readonly within?: readonly string[] | 'lockset' | 'latch' | 'barOnEachLeaf';
  /** Ordered by the width of the leaf it lies on. */
  readonly cutToLeaf?: true;
  /** Facts by which it is another part number. */
  readonly article?: readonly FactKey[];
  /** What has to be known to order it, besides its name. */
  readonly told?: readonly Told[];
  /** The cable it hangs on. */
  readonly cable?: 'reader' | 'contact' | 'requestToExit' | 'sensor' | 'release' | 'operator';
  /** What it counts as where current is added up. */
  readonly load?: 'reader' | 'sensor' | 'sounder' | 'operatorRelay' | 'wirelessHub';
  /** Counted by the electrical layout, not opening by opening. */
  readonly laidOut?: true;
}

/** Sections of the specification that a bid is divided by. Numbers and titles from memory of MasterFormat. */
export const sections = {
  '08 11 13': 'Doors and frames',
  '08 71 00': 'Door hardware',
  '08 71 13': 'Automatic operators',
  '10 14 00': 'Signs',
  '26 05 00': 'Electrical work',
  '28 13 00': 'Access control',
  '28 46 00': 'Fire alarm',
  '01 00 00': 'Owner',
} as const;
export type Section = keyof typeof sections;

/** Where the work of a trade is usually specified. Common practice, no source; the contract may divide it otherwise. */
export const sectionOfTrade: Record<Trade, Section> = {
  locksmith: '08 71 00',
  doorSupplier: '08 11 13',
  security: '28 13 00',
  electrician: '26 05 00',
  fireAlarm: '28 46 00',
  signs: '10 14 00',
  owner: '01 00 00',
};

/** Every part a decision can ask for, named in trade words. */
export const items = {
  hinges: {
    name: 'Butt hinges',
    trade: 'locksmith',
    step: 'hang',
    standard: 'A156.1',
    addition: true,
    finished: true,
    told: ['leafSize'],
  },
  continuousHinge: {
    name: 'Continuous hinge',
    trade: 'locksmith',
    step: 'hang',
    standard: 'A156.26',
    handed: true,
    addition: true,
    finished: true,
    told: ['leafSize'],
  },
  pivots: {
    name: 'Pivot set',
    trade: 'locksmith',
    step: 'hang',
    standard: 'A156.4',
    addition: true,
    finished: true,
    told: ['leafSize'],
  },
  powerTransfer: { name: 'Power transfer at the hinges', trade: 'locksmith', step: 'hang', told: ['hinges'] },
  leafRaceway: {
    name: 'Raceway in the leaf from hinge to lock',
    trade: 'doorSupplier',
    step: 'hang',
    block: 'work',
  },
  frameRaceway: {
    name: 'Surface raceway or conduit to the frame',
    trade: 'electrician',
    step: 'electrical',
    block: 'work',
  },

  electricStrike: {
    name: 'Electric strike',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.31',
    electrified: true,
    finished: true,
    told: ['cutout'],
  },
  fireListedStrike: {
    name: 'Electric strike listed for fire doors, fail secure',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.31, UL 10C',
    electrified: true,
    finished: true,
    standsInFor: 'electricStrike',
    samePartAs: 'electricStrike',
    told: ['cutout'],
  },
  continuousDutyStrike: {
    name: 'Electric strike with a coil rated for continuous duty',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.31',
    electrified: true,
    finished: true,
    standsInFor: 'electricStrike',
    within: ['fireListedStrike'],
    told: ['cutout'],
  },
  preloadStrike: {
    name: 'Electric strike tested to release under preload',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.31, optional test',
    electrified: true,
    finished: true,
    standsInFor: 'electricStrike',
    within: ['fireListedStrike', 'continuousDutyStrike'],
    told: ['cutout'],
  },
  storeroomLockset: {
    name: 'Lockset, storeroom function (outside always locked)',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.2 or A156.13',
    finished: true,
    latches: true,
    within: 'lockset',
    article: ['latch'],
    told: ['lockBody', 'handing'],
  },
  passiveLatch: {
    name: 'Listed latching hardware in addition to the magnet',
    trade: 'locksmith',
    step: 'secure',
  },
  magnetLock: {
    name: 'Electromagnetic lock',
    trade: 'security',
    step: 'secure',
    standard: 'A156.23',
    electrified: true,
    finished: true,
  },
  doubleMagnet: {
    name: 'Second magnet (one on each leaf)',
    trade: 'security',
    step: 'secure',
    standard: 'A156.23',
    electrified: true,
    finished: true,
  },
  magnetBracket: {
    name: 'Z-bracket for an in-swinging leaf',
    trade: 'security',
    step: 'secure',
    per: 'device',
  },
  glassBracket: { name: 'Glass armature bracket', trade: 'security', step: 'secure', per: 'device' },
  electricBolt: {
    name: 'Electric bolt',
    trade: 'locksmith',
    step: 'secure',
    electrified: true,
    finished: true,
  },
  mortiseLock: {
    name: 'Electrified mortise lock',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.13, A156.25',
    handed: true,
    electrified: true,
    finished: true,
    kind: 'lockset',
    latches: true,
  },
  cylindricalLock: {
    name: 'Electrified cylindrical lock',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.2, A156.25',
    electrified: true,
    finished: true,
    kind: 'lockset',
    latches: true,
  },
  exitTrim: {
    name: 'Electrified exit-device trim',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.3, A156.25',
    handed: true,
    electrified: true,
    finished: true,
  },
  latchRetraction: {
    name: 'Electric latch retraction kit',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.3',
    electrified: true,
    finished: true,
  },
  delayedExitDevice: {
    name: 'Delayed-egress exit device',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.24',
    handed: true,
    electrified: true,
    finished: true,
    kind: 'bar',
    latches: true,
    cutToLeaf: true,
  },
  delayedMagnet: {
    name: 'Delayed-egress magnet',
    trade: 'security',
    step: 'secure',
    standard: 'A156.24',
    electrified: true,
    finished: true,
  },
  glassLock: {
    name: 'Electrified patch or header lock for glass',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.44',
    electrified: true,
    finished: true,
  },
  glassRails: {
    name: 'Full-width rails top and bottom, or a new glass leaf made with them',
    trade: 'doorSupplier',
    step: 'hang',
    standard: 'A156.44',
    per: 'device',
    addition: true,
  },
  glassRailExit: {
    name: 'Rail exit device for glass with electric release',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.3',
    handed: true,
    electrified: true,
    finished: true,
    kind: 'bar',
    latches: true,
    cutToLeaf: true,
  },
  narrowStileLatch: {
    name: 'Electrified narrow-stile latch',
    trade: 'locksmith',
    step: 'secure',
    handed: true,
    electrified: true,
    finished: true,
    kind: 'lockset',
    latches: true,
  },
  gateLock: {
    name: 'Weather-rated electrified gate lock',
    trade: 'locksmith',
    step: 'secure',
    handed: true,
    electrified: true,
    finished: true,
  },
  batteryLock: {
    name: 'Battery-powered lockset',
    trade: 'locksmith',
    step: 'secure',
    handed: true,
    finished: true,
    kind: 'lockset',
    latches: true,
  },
  operatorControl: {
    name: 'Operator’s own lock and control, with an input for the reader',
    trade: 'doorSupplier',
    step: 'control',
    standard: 'A156.10 or UL 325',
    section: '08 71 13',
    cable: 'operator',
    load: 'operatorRelay',
  },
  batteryTrim: {
    name: 'Battery-powered trim for the exit device',
    trade: 'locksmith',
    step: 'secure',
    finished: true,
  },
  wirelessHub: {
    name: 'Wireless hub or gateway within reach of the lock',
    trade: 'security',
    step: 'electrical',
    shared: true,
    load: 'wirelessHub',
  },
  removeLock: {
    name: 'Remove existing lock; cover or fill holes',
    trade: 'locksmith',
    step: 'secure',
    block: 'work',
  },
  removeElectricLock: {
    name: 'Remove existing magnet, bolt or strike; make wiring safe',
    trade: 'security',
    step: 'secure',
    block: 'work',
  },
  removeAddedLock: {
    name: 'Remove padlock, slide bolt or barricade',
    trade: 'locksmith',
    step: 'secure',
    block: 'work',
  },
  removeFlushBolts: {
    name: 'Remove manual bolts from the inactive leaf',
    trade: 'locksmith',
    step: 'secure',
    block: 'work',
  },
  interlockLogic: {
    name: 'Interlock controller with its logic, disabled on fire alarm',
    trade: 'security',
    step: 'electrical',
    shared: true,
  },
  mechanicalLock: {
    name: 'Mechanical lockset',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.2 or A156.13',
    finished: true,
    kind: 'lockset',
    latches: true,
    article: ['latch', 'lockFunction'],
    told: ['lockBody', 'lockFunction', 'handing'],
  },
  pushPull: {
    name: 'Push plate and pull handle',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.6',
    finished: true,
  },
  keyLockMainDoor: {
    name: 'Key-operated lock, readily distinguishable as locked',
    trade: 'locksmith',
    step: 'secure',
    keyed: true,
    finished: true,
    standsInFor: 'mechanicalLock',
    kind: 'lockset',
    latches: true,
  },
  panicHardware: {
    name: 'Panic hardware',
    trade: 'locksmith',
    step: 'secure',
    standard: 'UL 305, A156.3',
    per: 'bar',
    finished: true,
    latches: true,
    within: 'barOnEachLeaf',
    cutToLeaf: true,
    article: ['latch'],
    told: ['latch', 'lockFunction', 'leafWidthIn'],
  },
  fireExitHardware: {
    name: 'Fire exit hardware, without mechanical dogging',
    trade: 'locksmith',
    step: 'secure',
    standard: 'UL 10C and UL 305',
    per: 'bar',
    finished: true,
    standsInFor: 'panicHardware',
    latches: true,
    within: 'barOnEachLeaf',
    cutToLeaf: true,
    article: ['latch'],
    told: ['latch', 'lockFunction', 'leafWidthIn'],
  },
  pushPadDevice: {
    name: 'Push-pad exit device for a balanced door',
    trade: 'locksmith',
    step: 'secure',
    finished: true,
    cutToLeaf: true,
  },
  automaticFlushBolts: {
    name: 'Automatic or constant-latching flush bolts',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.3',
    finished: true,
  },
  auxiliaryFirePin: { name: 'Auxiliary fire pin', trade: 'locksmith', step: 'secure', addition: true },
  manualFlushBolts: {
    name: 'Manual flush bolts',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.16',
    finished: true,
  },
  mullion: { name: 'Mullion between the leaves', trade: 'doorSupplier', step: 'hang' },
  keyCylinder: {
    name: 'Key override cylinder',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.5',
    keyed: true,
    finished: true,
  },
  outsideUnlockKey: {
    name: 'Key or approved means to unlock from outside',
    trade: 'locksmith',
    step: 'secure',
    within: ['keyCylinder'],
  },
  fireLabelledHardware: {
    name: 'Every hardware item labeled for fire doors',
    trade: 'locksmith',
    step: 'secure',
    quality: true,
  },
  newLeaf: {
    name: 'New leaf made with the lock preparation and its raceway',
    trade: 'doorSupplier',
    step: 'hang',
    handed: true,
    addition: true,
    standsInFor: 'leafRaceway',
  },
  leafPreparation: {
    name: 'Lock preparation cut in the leaf in place',
    trade: 'doorSupplier',
    step: 'hang',
    block: 'work',
  },
  laboratoryApproval: {
    name: 'Listing laboratory’s approval before cutting',
    trade: 'doorSupplier',
    step: 'paper',
    block: 'work',
  },
  latchingHardware: {
    name: 'Latch listed for fire doors (the chosen lock or exit device may be it)',
    trade: 'locksmith',
    step: 'secure',
    within: 'latch',
  },
  doubleEgressListing: {
    name: 'Double-egress frame and leaves listed together, both leaves latching',
    trade: 'doorSupplier',
    step: 'secure',
  },
  listedLock: {
    name: 'Lock listed to UL 294 (2024: UL 294 or UL 1034)',
    trade: 'security',
    step: 'secure',
    standard: 'UL 294',
    quality: true,
  },
  latchHardwareOnLeaf: { name: 'Latch-releasing hardware on the leaf', trade: 'locksmith', step: 'secure' },
  breakawayHardware: {
    name: 'Swing-out breakaway to the full required width',
    trade: 'doorSupplier',
    step: 'hang',
    standard: 'A156.10',
  },

  lockTakenOff: {
    name: 'Remove old lock or bolt from the leaf; cover holes',
    trade: 'locksmith',
    step: 'secure',
    block: 'work',
    quality: true,
  },
  delayBothSides: {
    name: 'Touch bar or sensing push on the other side as well, starting the delay',
    trade: 'security',
    step: 'secure',
  },
  passageFunction: {
    name: 'Passage function: entry side never locked',
    trade: 'locksmith',
    step: 'secure',
    quality: true,
  },
  insideRelease: {
    name: 'Lever or knob that opens from inside the closet',
    trade: 'locksmith',
    step: 'secure',
    quality: true,
  },
  noInsideLock: {
    name: 'No thumbturn, button or bolt to lock from inside',
    trade: 'locksmith',
    step: 'secure',
    quality: true,
  },
  lockFromInside: {
    name: 'Lock that is set from inside without opening the door',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.2 or A156.13',
    within: 'lockset',
  },
  testedShelterAssembly: {
    name: 'Door, frame and hardware as one tested shelter assembly',
    trade: 'doorSupplier',
    step: 'secure',
    standard: 'ICC 500',
  },
  interlockCable: {
    name: 'Cable from lock, door contact and override to the interlock controller',
    trade: 'security',
    step: 'electrical',
    addition: true,
  },
  interlockOverride: {
    name: 'Override at both doors: both leaves can stand open together',
    trade: 'security',
    step: 'electrical',
    addition: true,
  },

  coordinator: {
    name: 'Coordinator',
    trade: 'locksmith',
    step: 'control',
    standard: 'A156.3',
    finished: true,
  },
  closer: {
    name: 'Door closer',
    trade: 'locksmith',
    step: 'control',
    standard: 'A156.4',
    addition: true,
    finished: true,
    told: ['leafWidthIn'],
  },
  smokeHoldOpen: {
    name: 'Hold-open released by smoke detection and power loss',
    trade: 'fireAlarm',
    step: 'control',
    standard: 'A156.15',
  },
  fireListedOperator: {
    name: 'Automatic operator listed for fire doors, disabled on fire alarm',
    trade: 'doorSupplier',
    step: 'control',
    standard: 'A156.10 or A156.19',
    section: '08 71 13',
    standsInFor: 'automaticOperator',
  },
  automaticOperator: {
    name: 'Automatic operator',
    trade: 'doorSupplier',
    step: 'control',
    standard: 'A156.10 or A156.19',
    section: '08 71 13',
  },

  smokeClosing: { name: 'Self-closing on smoke detection', trade: 'fireAlarm', step: 'control' },
  operatorStandbyPower: {
    name: 'Supervised standby power for the operator',
    trade: 'electrician',
    step: 'electrical',
    section: '08 71 13',
  },
  openByHand: {
    name: 'Opens by hand when power fails',
    trade: 'doorSupplier',
    step: 'control',
    standard: 'A156.10 or A156.38',
    section: '08 71 13',
  },
  collapsingWings: {
    name: 'Collapsible wings, 36 in of total passage',
    trade: 'doorSupplier',
    step: 'control',
    standard: 'A156.27',
  },
  fullOpenMeans: {
    name: 'Means to fix the grille fully open while the public is in',
    trade: 'doorSupplier',
    step: 'control',
  },
  employeeRelease: {
    name: 'Manual release of the turnstile by an attendant',
    trade: 'security',
    step: 'electrical',
  },
  accessibleLane: {
    name: 'Accessible lane or door beside the barrier',
    trade: 'doorSupplier',
    step: 'control',
  },

  gasketing: { name: 'Gasketing', trade: 'locksmith', step: 'protect', standard: 'A156.22', addition: true },
  intumescent: {
    name: 'Listed intumescent treatment at the strike box',
    trade: 'doorSupplier',
    step: 'protect',
    addition: true,
  },
  latchGuard: {
    name: 'Latch guard or astragal',
    trade: 'locksmith',
    step: 'protect',
    addition: true,
    finished: true,
  },
  weatherRated: {
    name: 'Weather-rated device, box and cable entry',
    trade: 'security',
    step: 'protect',
    quality: true,
  },

  reader: {
    name: 'Credential reader, secure side',
    trade: 'security',
    step: 'electrical',
    cable: 'reader',
    load: 'reader',
  },
  readerInside: {
    name: 'Credential reader, egress side (records only)',
    trade: 'security',
    step: 'electrical',
    cable: 'reader',
    load: 'reader',
  },
  doorPosition: { name: 'Door position switch', trade: 'security', step: 'electrical', cable: 'contact' },
  doorPositionInactive: {
    name: 'Door position switch, inactive leaf',
    trade: 'security',
    step: 'electrical',
    addition: true,
    cable: 'contact',
  },
  requestToExit: {
    name: 'Request-to-exit switch in the lock or bar (shunts the alarm)',
    trade: 'security',
    step: 'electrical',
    cable: 'requestToExit',
  },
  exitShuntSensor: {
    name: 'Request-to-exit motion detector over the door (shunts the alarm, unlocks nothing)',
    trade: 'security',
    step: 'electrical',
    cable: 'sensor',
    load: 'sensor',
  },
  accessController: {
    name: 'Access controller: reader port, lock output, inputs',
    trade: 'security',
    step: 'electrical',
    standard: 'UL 294',
    shared: true,
    laidOut: true,
  },
  lockCable: {
    name: 'Cable from controller and supply to the opening',
    trade: 'security',
    step: 'electrical',
    told: ['cable'],
    laidOut: true,
  },
  lockSupply: {
    name: 'Listed lock power supply with standby battery',
    trade: 'electrician',
    step: 'electrical',
    shared: true,
    told: ['supplyVolts'],
    laidOut: true,
  },
  exitSensor: {
    name: 'Exit sensor on the egress side, unlocking on loss of its power or signal',
    trade: 'security',
    step: 'electrical',
    cable: 'sensor',
    load: 'sensor',
  },
  pushToExit: {
    name: 'Push button, breaks lock power directly, at least 30 s',
    trade: 'security',
    step: 'electrical',
    cable: 'release',
  },
  signPushToExit: { name: 'Sign PUSH TO EXIT', trade: 'signs', step: 'electrical' },
  doorSwitchHardware: {
    name: 'Bar or lever with a switch that breaks lock power directly',
    trade: 'locksmith',
    step: 'secure',
    finished: true,
    cable: 'release',
  },
  fireAlarmRelease: {
    name: 'Fire-alarm connection: unlocks, held until reset',
    trade: 'fireAlarm',
    step: 'electrical',
    shared: true,
  },
  fireAlarmRelatch: {
    name: 'Fire-alarm connection: drops power so the door latches',
    trade: 'fireAlarm',
    step: 'electrical',
    shared: true,
  },
  doorDetector: {
    name: 'Smoke detector at the door: drops power so the door latches',
    trade: 'fireAlarm',
    step: 'electrical',
  },
  powerLossRelease: {
    name: 'Unlocks on loss of lock power',
    trade: 'electrician',
    step: 'electrical',
    quality: true,
  },
  detectionRelease: {
    name: 'Release on sprinkler flow or automatic detection',
    trade: 'fireAlarm',
    step: 'electrical',
    shared: true,
  },
  stairReleaseTogether: {
    name: 'Release of all locked stair doors together',
    trade: 'fireAlarm',
    step: 'electrical',
    shared: true,
  },
  stairAlarmRelease: {
    name: 'Stair side unlocks on fire alarm, latch stays',
    trade: 'fireAlarm',
    step: 'electrical',
    shared: true,
  },
  stairPhones: {
    name: 'Two-way communication at every fifth floor of the stair',
    trade: 'security',
    step: 'electrical',
    shared: true,
  },
  remoteRelease: {
    name: 'Remote switch that breaks lock power directly',
    trade: 'fireAlarm',
    step: 'electrical',
    shared: true,
  },
  detentionRelease: {
    name: 'Release from outside the living area, on emergency power or mechanical',
    trade: 'security',
    step: 'electrical',
  },
  staffKeySwitch: {
    name: 'Key switch at the door that breaks lock power directly, key carried by staff',
    trade: 'security',
    step: 'electrical',
  },
  overrideReset: {
    name: 'Manual reset of the release; no automatic relock',
    trade: 'fireAlarm',
    step: 'electrical',
    shared: true,
  },
  publicHoursDisarm: {
    name: 'Lock disarmed while open to the public or occupied',
    trade: 'security',
    step: 'electrical',
    block: 'work',
  },
  twoWayCommunication: {
    name: 'Two-way communication at the door',
    trade: 'security',
    step: 'electrical',
  },
  emergencyLighting: {
    name: 'Emergency lighting on the egress side',
    trade: 'electrician',
    step: 'electrical',
    addition: true,
  },
  delaySounder: {
    name: 'Audible signal at the door, re-armed by hand',
    trade: 'security',
    step: 'electrical',
    load: 'sounder',
  },
  delayOverride: {
    name: 'Switch that cancels the delay, at the fire command center or another approved place',
    trade: 'fireAlarm',
    step: 'electrical',
    shared: true,
  },
  operatorSequence: {
    name: 'Sequence: latch released before the operator drives',
    trade: 'security',
    step: 'electrical',
    block: 'work',
    cable: 'operator',
    load: 'operatorRelay',
  },
  battery: {
    name: 'Fresh batteries and low-battery report',
    trade: 'owner',
    step: 'electrical',
    block: 'duty',
  },
  alarmShunt: { name: 'Local alarm shunted by the inside reader', trade: 'security', step: 'electrical' },

  signDelayed15: {
    name: 'Sign: PUSH UNTIL ALARM SOUNDS. DOOR CAN BE OPENED IN 15 SECONDS',
    trade: 'signs',
    step: 'protect',
    per: 'device',
  },
  signDelayed30: {
    name: 'Sign: PUSH UNTIL ALARM SOUNDS. DOOR CAN BE OPENED IN 30 SECONDS',
    trade: 'signs',
    step: 'protect',
    per: 'device',
    standsInFor: 'signDelayed15',
  },
  signDelayedPull: {
    name: 'Sign: PULL UNTIL ALARM SOUNDS. DOOR CAN BE OPENED IN 15 SECONDS',
    trade: 'signs',
    step: 'protect',
    per: 'device',
    standsInFor: 'signDelayed15',
  },
  signDelayedPull30: {
    name: 'Sign: PULL UNTIL ALARM SOUNDS. DOOR CAN BE OPENED IN 30 SECONDS',
    trade: 'signs',
    step: 'protect',
    per: 'device',
    standsInFor: 'signDelayed15',
  },
  signKeyLock: {
    name: 'Sign: THIS DOOR TO REMAIN UNLOCKED WHEN THIS SPACE IS OCCUPIED',
    trade: 'signs',
    step: 'protect',
  },
  signKeyLockBuilding: {
    name: 'Sign: THIS DOOR TO REMAIN UNLOCKED WHEN THE BUILDING IS OCCUPIED',
    trade: 'signs',
    step: 'protect',
  },
  signOutdoor: {
    name: 'Sign: THIS DOOR TO REMAIN UNLOCKED WHEN THE OUTDOOR AREA IS OCCUPIED',
    trade: 'signs',
    step: 'protect',
  },
  signReentry: { name: 'Re-entry signs on the stair side', trade: 'signs', step: 'protect', addition: true },
  postedLoad: { name: 'Posted occupant load', trade: 'signs', step: 'protect', addition: true },
  glazedOpening: {
    name: 'Clear glazed opening of 5 ft² or more at the door',
    trade: 'doorSupplier',
    step: 'protect',
    block: 'work',
  },
  keyBox: { name: 'Fire-department key box or key switch', trade: 'owner', step: 'protect', addition: true },

  fieldLabel: {
    name: 'Leaf and frame inspected and relabeled by a labeling agency',
    trade: 'doorSupplier',
    step: 'paper',
    block: 'work',
  },
  ahjApproval: { name: 'Written approval of the authority', trade: 'owner', step: 'paper', block: 'work' },
  staffMeans: {
    name: 'Keys or codes carried by all clinical staff; unlocking in the emergency plan',
    trade: 'owner',
    step: 'paper',
    shared: true,
    block: 'duty',
  },
  acceptanceTest: {
    name: 'Recorded acceptance test: power loss, fire alarm, manual release, timing',
    trade: 'security',
    step: 'paper',
    block: 'work',
  },
  yearlyInspection: { name: 'Annual inspection', trade: 'owner', step: 'paper', block: 'duty' },
  holeRecord: {
    name: 'Record of hole sizes drilled in the labeled door',
    trade: 'locksmith',
    step: 'paper',
    block: 'work',
  },
} as const satisfies Record<string, Item>;

export type ItemId = keyof typeof items;

/** An item with the general type, which names what most of them leave out. */
export function itemOf(id: ItemId): Item {
  return items[id];
}

/** What an entry says of other entries; the compiler holds that they are there. */
interface Links extends Pick<Item, 'name'> {
  readonly standsInFor?: ItemId;
  readonly samePartAs?: ItemId;
  readonly within?: readonly ItemId[] | 'lockset' | 'latch' | 'barOnEachLeaf';
}
const links: Readonly<Record<ItemId, Links>> = items;

export function linksOf(id: ItemId): Links {
  return links[id];
}

/** Section of the specification the item is usually bought under. */
export function sectionOf(id: ItemId): Section {
  const found = itemOf(id);
  return found.section ?? sectionOfTrade[found.trade];
}
