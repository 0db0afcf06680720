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
  signs: 'Sign maker',
  owner: 'Owner',
};

/** Steps in which a set is listed: hang, secure, control, protect, then the electrified parts. */
export type SetStep = 'hang' | 'secure' | 'control' | 'protect' | 'electrical' | 'paper';

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
}

/** Every part a decision can ask for, named in trade words. */
export const items = {
  hinges: { name: 'Butt hinges', trade: 'locksmith', step: 'hang', standard: 'A156.1' },
  continuousHinge: {
    name: 'Continuous hinge',
    trade: 'locksmith',
    step: 'hang',
    standard: 'A156.26',
    handed: true,
  },
  pivots: { name: 'Pivot set', trade: 'locksmith', step: 'hang', standard: 'A156.4' },
  powerTransfer: { name: 'Power transfer across the hinge line', trade: 'locksmith', step: 'hang' },
  leafRaceway: { name: 'Wire way in the leaf from hinge to lock', trade: 'doorSupplier', step: 'hang' },
  frameRaceway: { name: 'Surface raceway or conduit to the frame', trade: 'electrician', step: 'electrical' },

  electricStrike: { name: 'Electric strike', trade: 'locksmith', step: 'secure', standard: 'A156.31' },
  fireListedStrike: {
    name: 'Electric strike listed for fire doors, fail secure',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.31, UL 10C',
  },
  continuousDutyStrike: {
    name: 'Electric strike with a coil rated for continuous duty',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.31',
  },
  preloadStrike: {
    name: 'Electric strike tested to release under preload',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.31, optional test',
  },
  storeroomLockset: {
    name: 'Lockset, storeroom function (outside always locked)',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.2 or A156.13',
  },
  passiveLatch: { name: 'Listed latching hardware beside the magnet', trade: 'locksmith', step: 'secure' },
  magnetLock: { name: 'Electromagnetic lock', trade: 'security', step: 'secure', standard: 'A156.23' },
  doubleMagnet: {
    name: 'Second magnet (one on each leaf)',
    trade: 'security',
    step: 'secure',
    standard: 'A156.23',
  },
  magnetBracket: {
    name: 'Z-bracket for an in-swinging leaf',
    trade: 'security',
    step: 'secure',
    per: 'device',
  },
  glassBracket: { name: 'Glass armature bracket', trade: 'security', step: 'secure', per: 'device' },
  electricBolt: { name: 'Electric bolt', trade: 'locksmith', step: 'secure' },
  mortiseLock: {
    name: 'Electrified mortise lock',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.13, A156.25',
    handed: true,
  },
  cylindricalLock: {
    name: 'Electrified cylindrical lock',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.2, A156.25',
  },
  exitTrim: {
    name: 'Electrified exit-device trim',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.3, A156.25',
    handed: true,
  },
  latchRetraction: {
    name: 'Electric latch retraction kit',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.3',
  },
  delayedExitDevice: {
    name: 'Delayed-egress exit device',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.24',
    handed: true,
  },
  delayedMagnet: { name: 'Delayed-egress magnet', trade: 'security', step: 'secure', standard: 'A156.24' },
  glassLock: {
    name: 'Electrified patch or header lock for glass',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.44',
  },
  glassRails: {
    name: 'Full-width rails top and bottom, or a new glass leaf made with them',
    trade: 'doorSupplier',
    step: 'hang',
    standard: 'A156.44',
    per: 'device',
  },
  glassRailExit: {
    name: 'Rail exit device for glass with electric release',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.3',
    handed: true,
  },
  narrowStileLatch: {
    name: 'Electrified narrow-stile latch',
    trade: 'locksmith',
    step: 'secure',
    handed: true,
  },
  gateLock: { name: 'Weather-rated electrified gate lock', trade: 'locksmith', step: 'secure', handed: true },
  batteryLock: { name: 'Battery-powered lockset', trade: 'locksmith', step: 'secure', handed: true },
  operatorControl: {
    name: 'Operator’s own lock and control, with an input for the reader',
    trade: 'doorSupplier',
    step: 'control',
    standard: 'A156.10 or UL 325',
  },
  batteryTrim: { name: 'Battery-powered trim for the exit device', trade: 'locksmith', step: 'secure' },
  wirelessHub: {
    name: 'Wireless hub or gateway within reach of the lock',
    trade: 'security',
    step: 'electrical',
    shared: true,
  },
  removeLock: {
    name: 'Present lock taken off, its holes covered or filled',
    trade: 'locksmith',
    step: 'secure',
  },
  removeElectricLock: {
    name: 'Present magnet, bolt or strike taken off, its wires made safe',
    trade: 'security',
    step: 'secure',
  },
  removeAddedLock: {
    name: 'Padlock, slide bolt or barricade taken off',
    trade: 'locksmith',
    step: 'secure',
  },
  removeFlushBolts: {
    name: 'Bolts worked by hand taken out of the inactive leaf',
    trade: 'locksmith',
    step: 'secure',
  },
  interlockLogic: {
    name: 'Interlock logic between the doors, off on fire alarm',
    trade: 'security',
    step: 'electrical',
    shared: true,
  },
  mechanicalLock: {
    name: 'Mechanical lockset',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.2 or A156.13',
  },
  pushPull: {
    name: 'Push plate and pull handle',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.6',
  },
  keyLockMainDoor: { name: 'Key-operated lock, readily seen as locked', trade: 'locksmith', step: 'secure' },
  panicHardware: {
    name: 'Panic hardware',
    trade: 'locksmith',
    step: 'secure',
    standard: 'UL 305, A156.3',
    per: 'bar',
  },
  fireExitHardware: {
    name: 'Fire exit hardware, without mechanical dogging',
    trade: 'locksmith',
    step: 'secure',
    standard: 'UL 10C and UL 305',
    per: 'bar',
  },
  pushPadDevice: { name: 'Push-pad exit device for a balanced door', trade: 'locksmith', step: 'secure' },
  automaticFlushBolts: {
    name: 'Automatic or constant-latching flush bolts',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.3',
  },
  auxiliaryFirePin: { name: 'Auxiliary fire pin', trade: 'locksmith', step: 'secure' },
  manualFlushBolts: { name: 'Manual flush bolts', trade: 'locksmith', step: 'secure', standard: 'A156.16' },
  mullion: { name: 'Mullion between the leaves', trade: 'doorSupplier', step: 'hang' },
  keyCylinder: { name: 'Key override cylinder', trade: 'locksmith', step: 'secure', standard: 'A156.5' },
  outsideUnlockKey: {
    name: 'Key or approved means to unlock from outside',
    trade: 'locksmith',
    step: 'secure',
  },
  fireLabelledHardware: {
    name: 'Every hardware item labeled for fire doors',
    trade: 'locksmith',
    step: 'secure',
    quality: true,
  },
  labeledLeafOrFrame: {
    name: 'New labeled leaf or frame made with the preparation',
    trade: 'doorSupplier',
    step: 'secure',
  },
  laboratoryApproval: {
    name: 'Listing laboratory’s approval before cutting',
    trade: 'doorSupplier',
    step: 'paper',
  },
  latchingHardware: {
    name: 'Latch listed for fire doors (the chosen lock or exit device may be it)',
    trade: 'locksmith',
    step: 'secure',
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
    name: 'Old lock or bolt taken off the leaf, its holes covered',
    trade: 'locksmith',
    step: 'secure',
    quality: true,
  },
  delayBothSides: {
    name: 'Touch bar or sensing push on the other side as well, starting the delay',
    trade: 'security',
    step: 'secure',
  },
  passageFunction: {
    name: 'Passage function: nothing locks the entry side',
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
    name: 'No turn, button or bolt to lock from inside',
    trade: 'locksmith',
    step: 'secure',
    quality: true,
  },
  lockFromInside: {
    name: 'Lock that is set from inside without opening the door',
    trade: 'locksmith',
    step: 'secure',
    standard: 'A156.2 or A156.13',
  },
  testedShelterAssembly: {
    name: 'Door, frame and hardware as one tested shelter assembly',
    trade: 'doorSupplier',
    step: 'secure',
    standard: 'ICC 500',
  },
  interlockOverride: {
    name: 'Override at both doors: both leaves can stand open together',
    trade: 'security',
    step: 'electrical',
  },

  coordinator: { name: 'Coordinator', trade: 'locksmith', step: 'control', standard: 'A156.3' },
  closer: { name: 'Door closer', trade: 'locksmith', step: 'control', standard: 'A156.4' },
  smokeHoldOpen: {
    name: 'Hold-open released by smoke detection and power loss',
    trade: 'fireAlarm',
    step: 'control',
    standard: 'A156.15',
  },
  fireListedOperator: {
    name: 'Automatic operator listed for fire doors, off on fire alarm',
    trade: 'doorSupplier',
    step: 'control',
    standard: 'A156.10 or A156.19',
  },
  automaticOperator: {
    name: 'Automatic operator',
    trade: 'doorSupplier',
    step: 'control',
    standard: 'A156.10 or A156.19',
  },

  smokeClosing: { name: 'Closes by itself on smoke detection', trade: 'fireAlarm', step: 'control' },
  operatorStandbyPower: {
    name: 'Supervised standby power for the operator',
    trade: 'electrician',
    step: 'electrical',
  },
  openByHand: {
    name: 'Opens by hand when power fails',
    trade: 'doorSupplier',
    step: 'control',
    standard: 'A156.10 or A156.38',
  },
  collapsingWings: {
    name: 'Wings that fold away, 36 in of passage in all',
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
    name: 'Manual release of the turnstile by an employee on the spot',
    trade: 'security',
    step: 'electrical',
  },
  accessibleLane: {
    name: 'Accessible lane or door beside the barrier',
    trade: 'doorSupplier',
    step: 'control',
  },

  gasketing: { name: 'Gasketing', trade: 'locksmith', step: 'protect', standard: 'A156.22' },
  intumescent: {
    name: 'Listed intumescent treatment at the strike box',
    trade: 'doorSupplier',
    step: 'protect',
  },
  latchGuard: { name: 'Latch guard or astragal', trade: 'locksmith', step: 'protect' },
  weatherRated: {
    name: 'Weather-rated device, box and cable entry',
    trade: 'security',
    step: 'protect',
    quality: true,
  },

  reader: { name: 'Credential reader, secure side', trade: 'security', step: 'electrical' },
  readerInside: {
    name: 'Credential reader, egress side (records only)',
    trade: 'security',
    step: 'electrical',
  },
  doorPosition: { name: 'Door position switch', trade: 'security', step: 'electrical' },
  doorPositionInactive: {
    name: 'Door position switch, inactive leaf',
    trade: 'security',
    step: 'electrical',
  },
  requestToExit: {
    name: 'Request-to-exit switch in the lock or bar (shunts the alarm)',
    trade: 'security',
    step: 'electrical',
  },
  exitShuntSensor: {
    name: 'Request-to-exit motion detector over the door (shunts the alarm, unlocks nothing)',
    trade: 'security',
    step: 'electrical',
  },
  accessController: {
    name: 'Access controller: reader port, lock output, inputs',
    trade: 'security',
    step: 'electrical',
    standard: 'UL 294',
    shared: true,
  },
  lockCable: {
    name: 'Cable from controller and supply to the opening',
    trade: 'security',
    step: 'electrical',
  },
  lockSupply: {
    name: 'Listed lock power supply with standby battery',
    trade: 'electrician',
    step: 'electrical',
    shared: true,
  },
  exitSensor: {
    name: 'Exit sensor on the egress side, unlocking on loss of its power or signal',
    trade: 'security',
    step: 'electrical',
  },
  pushToExit: {
    name: 'Push button, breaks lock power directly, at least 30 s',
    trade: 'security',
    step: 'electrical',
  },
  signPushToExit: { name: 'Sign PUSH TO EXIT', trade: 'signs', step: 'electrical' },
  doorSwitchHardware: {
    name: 'Bar or lever with a switch that breaks lock power directly',
    trade: 'locksmith',
    step: 'secure',
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
  },
  delaySounder: {
    name: 'Audible signal at the door, re-armed by hand',
    trade: 'security',
    step: 'electrical',
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
  },
  battery: { name: 'Fresh batteries and low-battery report', trade: 'owner', step: 'electrical' },
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
  },
  signDelayedPull: {
    name: 'Sign: PULL UNTIL ALARM SOUNDS. DOOR CAN BE OPENED IN 15 SECONDS',
    trade: 'signs',
    step: 'protect',
    per: 'device',
  },
  signDelayedPull30: {
    name: 'Sign: PULL UNTIL ALARM SOUNDS. DOOR CAN BE OPENED IN 30 SECONDS',
    trade: 'signs',
    step: 'protect',
    per: 'device',
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
  signReentry: { name: 'Re-entry signs on the stair side', trade: 'signs', step: 'protect' },
  postedLoad: { name: 'Posted occupant load', trade: 'signs', step: 'protect' },
  glazedOpening: {
    name: 'Clear glazed opening of 5 ft² or more at the door',
    trade: 'doorSupplier',
    step: 'protect',
  },
  keyBox: { name: 'Fire-department key box or key switch', trade: 'owner', step: 'protect' },

  fieldLabel: {
    name: 'Leaf and frame inspected and labeled anew by a labeling agency',
    trade: 'doorSupplier',
    step: 'paper',
  },
  ahjApproval: { name: 'Authority’s approval in writing', trade: 'owner', step: 'paper' },
  staffMeans: {
    name: 'Keys or codes carried by all clinical staff; unlocking in the emergency plan',
    trade: 'owner',
    step: 'paper',
    shared: true,
  },
  acceptanceTest: {
    name: 'Recorded acceptance test: power loss, fire alarm, manual release, timing',
    trade: 'security',
    step: 'paper',
  },
  yearlyInspection: { name: 'Yearly inspection', trade: 'owner', step: 'paper' },
  holeRecord: {
    name: 'Record of hole sizes drilled in the labeled door',
    trade: 'locksmith',
    step: 'paper',
  },
} as const satisfies Record<string, Item>;

export type ItemId = keyof typeof items;

/** An item with the general type, which names what most of them leave out. */
export function itemOf(id: ItemId): Item {
  return items[id];
}
