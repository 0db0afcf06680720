import type { z } from 'zod';
import { amount, choice, type FieldInfo, fieldRegistry, yesNo } from './field.ts';

/**
 * Every surveyed fact: its values, range, unit, label and question. One table is the source of types,
 * validation, storage, import headers and form labels. Keys are part of the file format: never rename one
 * without a migration.
 */
export const factSchemas = {
  // ── Door ────────────────────────────────────────────────────────────────────────────────────────────
  doorType: choice(
    {
      single: 'Single swinging leaf',
      pair: 'Pair of leaves',
      doubleEgressPair: 'Double-egress pair',
      doubleActing: 'Double-acting leaf',
      balanced: 'Balanced door',
      slidingManual: 'Sliding, by hand',
      slidingAutomatic: 'Sliding, automatic',
      folding: 'Special-purpose sliding, accordion or folding',
      revolving: 'Revolving door',
      overhead: 'Overhead or coiling door',
      grille: 'Security grille',
      gateSwing: 'Swinging gate',
      gateSlide: 'Sliding gate',
      turnstile: 'Waist-high turnstile',
      turnstileFull: 'Full-height turnstile',
      turnstileSecurity: 'Security turnstile with powered barrier',
    },
    { label: 'Door type', group: 'door', ask: 'How does it open?' },
  ),
  leafMaterial: choice(
    {
      hollowMetal: 'Hollow metal',
      woodMineralCore: 'Wood, mineral core',
      woodSolidCore: 'Wood, solid core',
      woodHollowCore: 'Wood, hollow core or panel',
      aluminiumNarrow: 'Aluminum, narrow stile',
      aluminiumMedium: 'Aluminum, medium stile',
      aluminiumWide: 'Aluminum, wide stile',
      glassFrameless: 'All glass, frameless',
      glazedFireAssembly: 'Fire-resistive glazed assembly',
      gateFramed: 'Framed gate leaf',
      chainLink: 'Chain-link',
      rollingSteel: 'Rolling or coiling steel',
    },
    { label: 'Leaf material', group: 'door', ask: 'What is the leaf made of?' },
  ),
  leafWidthIn: amount(
    { min: 12, max: 240 },
    { label: 'Leaf width', group: 'door', unit: 'in', ask: 'How wide is the leaf (one leaf of a pair)?' },
  ),
  leafHeightIn: amount(
    { min: 24, max: 240 },
    { label: 'Leaf height', group: 'door', unit: 'in', ask: 'How high is the leaf?' },
  ),
  leafThicknessIn: amount(
    { min: 0.25, max: 6 },
    { label: 'Leaf thickness', group: 'door', unit: 'in', ask: 'How thick is the leaf?' },
  ),
  handing: choice(
    { LH: 'LH', RH: 'RH', LHR: 'LHR', RHR: 'RHR' },
    {
      label: 'Handing',
      group: 'door',
      ask: 'Standing on the secure side: hinges left or right, and does it swing toward you (R)?',
    },
  ),
  swingsWithEgress: yesNo({
    label: 'Swings with egress',
    group: 'door',
    ask: 'Does the leaf swing in the direction people leave?',
  }),
  visionPanel: choice(
    { none: 'None', narrow: 'Narrow', half: 'Half glass', full: 'Full glass' },
    { label: 'Vision panel', group: 'door', ask: 'Is there glass in the leaf?' },
  ),
  hinges: choice(
    {
      butt: 'Butt hinges',
      continuous: 'Continuous hinge',
      pivot: 'Pivots',
      swingClear: 'Swing-clear hinges',
      track: 'Track',
    },
    { label: 'Hanging', group: 'door', ask: 'What does the leaf hang on?' },
  ),
  glassRails: choice(
    { none: 'Patch fittings only', top: 'Top rail', both: 'Top and bottom rails' },
    { label: 'Rails on glass leaf', group: 'door', ask: 'Which rails does the glass leaf have?' },
  ),
  opensTo90: yesNo({ label: 'Opens to 90°', group: 'door', ask: 'Can the leaf open to 90 degrees?' }),

  // ── Frame ───────────────────────────────────────────────────────────────────────────────────────────
  frameMaterial: choice(
    {
      hollowMetal: 'Hollow metal',
      wood: 'Wood',
      aluminium: 'Aluminum',
      none: 'No frame (glass to wall or floor)',
      posts: 'Gate posts',
      track: 'Track or guides',
    },
    { label: 'Frame material', group: 'frame', ask: 'What is the frame made of?' },
  ),
  frameGrouted: yesNo({
    label: 'Frame grouted',
    group: 'frame',
    ask: 'Is the frame filled with grout or set in masonry?',
    help: 'Tap it or drill a pilot hole: a grouted frame has no room for a strike body or a wire.',
  }),
  frameConduit: yesNo({
    label: 'Conduit in frame',
    group: 'frame',
    ask: 'Is there a conduit or raceway in the frame?',
  }),
  strikePrep: choice(
    {
      ansi478: '4-7/8 × 1-1/4 in',
      light234: '2-3/4 × 1-1/8 in',
      residential: 'Residential full-lip',
      aluminium458: 'Aluminum deadlatch, about 4-5/8 in',
      none: 'No strike preparation',
    },
    { label: 'Strike preparation', group: 'frame', ask: 'What strike cutout does the frame have?' },
  ),
  headerRoom: yesNo({
    label: 'Header takes a shear magnet',
    group: 'frame',
    ask: 'Is the header at least 1-3/4 in deep inside?',
  }),
  wallConstruction: choice(
    {
      gypsum: 'Gypsum on studs',
      masonry: 'Masonry or concrete',
      glass: 'Glass or curtain wall',
      other: 'Other',
    },
    { label: 'Wall construction', group: 'frame', ask: 'What is the wall built of?' },
  ),

  // ── Latch and exit hardware ─────────────────────────────────────────────────────────────────────────
  latch: choice(
    {
      bored: 'Bored (cylindrical) latch',
      mortise: 'Mortise latch',
      mortiseDeadbolt: 'Mortise latch with deadbolt',
      boredPlusDeadbolt: 'Bored latch and a separate deadbolt',
      deadboltOnly: 'Deadbolt only',
      rimExit: 'Rim exit device',
      verticalRods: 'Vertical-rod exit device',
      rimPlusRods: 'Rim device on one leaf, rods on the other',
      deadlatch: 'Narrow-stile deadlatch',
      hookbolt: 'Narrow-stile hookbolt or deadbolt',
      patch: 'Patch or floor lock on glass',
      railExit: 'Exit device in glass rail',
      roller: 'Roller latch or magnetic catch',
      gateLock: 'Gate lock',
      operatorLock: 'Lock of the operator',
      pushPull: 'Push/pull only, no latch',
    },
    {
      label: 'Latch or exit device',
      group: 'latch',
      ask: 'What holds it shut now?',
      help: 'A faceplate about 2-1/4 in tall on the door edge is a bored latch; about 8 in tall is a mortise lock.',
    },
  ),
  lockFunction: choice(
    {
      storeroom: 'Storeroom (outside always locked)',
      classroom: 'Classroom (outside locked by key)',
      office: 'Office (outside locked by button)',
      passage: 'Passage (outside always free)',
      none: 'No outside trim',
    },
    { label: 'Lock function', group: 'latch', ask: 'What does the outside lever do?' },
  ),
  panicPresent: yesNo({
    label: 'Panic hardware present',
    group: 'latch',
    ask: 'Is there a push bar or pad on the egress side?',
  }),
  exitHardwareFireListed: yesNo({
    label: 'Fire exit hardware label seen',
    group: 'latch',
    ask: 'Does the exit device carry a fire exit hardware label?',
  }),
  lessBottomRod: yesNo({
    label: 'Rods without a bottom rod',
    group: 'latch',
    ask: 'Is the vertical-rod device without its bottom rod?',
  }),
  egressHardwareHeightIn: amount(
    { min: 0, max: 120 },
    {
      label: 'Height of egress hardware',
      group: 'latch',
      unit: 'in',
      ask: 'How high above the floor is the lever or bar?',
    },
  ),
  hardwareForceLbf: amount(
    { min: 0, max: 200 },
    { label: 'Force to release', group: 'latch', unit: 'lbf', ask: 'What force releases the hardware?' },
  ),
  latchProjectionIn: amount(
    { min: 0, max: 2 },
    {
      label: 'Latch projection',
      group: 'latch',
      unit: 'in',
      ask: 'How far does the latch reach into the strike?',
    },
  ),
  latchPreload: yesNo({
    label: 'Door pushes on its latch',
    group: 'latch',
    ask: 'Does gasket, warp or air pressure push the door against its latch?',
  }),
  closing: choice(
    {
      selfClosing: 'Self-closing (closer or spring hinges)',
      automaticClosing: 'Held open, closes on detection',
      none: 'Nothing closes it',
    },
    { label: 'Closing', group: 'latch', ask: 'What closes the door?' },
  ),
  existingArrangement: choice(
    {
      none: 'No lock today',
      freeLever: 'Lever that always opens from inside',
      freeBar: 'Exit device that always opens from inside',
      doubleCylinder: 'Lock keyed on both sides',
      deadboltPlusLatch: 'Latch and deadbolt, two motions',
      padlock: 'Padlock, or a chain with one',
      slideBolt: 'Slide bolt, night latch or security chain',
      barricade: 'Barricade device',
      magnetNoSensor: 'Magnet with a button only',
      magnetAlarmOnly: 'Magnet released by the fire alarm only',
      magnetFullSet: 'Magnet with sensor, button and alarm release',
      failSafeStrike: 'Fail-safe electric strike',
      cardToExit: 'Card or code needed to leave',
      buttonBeforeBar: 'Button that must be pressed before the bar works',
      electricBolt: 'Electric bolt',
      stairSideLocked: 'Stair side locked by key, no release',
    },
    {
      label: 'Locking found today',
      group: 'latch',
      ask: 'How is it locked today?',
      help: 'What is there now, allowed or not. A lock that the rules forbid is reported as a finding of its own.',
    },
  ),

  // ── Pair ────────────────────────────────────────────────────────────────────────────────────────────
  inactiveBolts: choice(
    {
      manualFlush: 'Manual flush or surface bolts',
      automaticFlush: 'Automatic flush bolts',
      constantLatching: 'Constant-latching (self-latching) bolts',
      rods: 'Vertical rods',
      rim: 'Rim device on a mullion',
      none: 'None',
    },
    { label: 'Inactive leaf held by', group: 'pair', ask: 'What holds the other leaf?' },
  ),
  inactiveNeededForCapacity: yesNo({
    label: 'Inactive leaf needed for width',
    group: 'pair',
    ask: 'Is the second leaf needed for the exit width?',
  }),
  inactiveHasHardware: yesNo({
    label: 'Hardware on inactive leaf',
    group: 'pair',
    ask: 'Is there a knob, lever or bar (even a dummy) on the inactive leaf?',
  }),
  coordinator: yesNo({
    label: 'Coordinator',
    group: 'pair',
    ask: 'Is there a coordinator that makes the inactive leaf close first?',
  }),
  activeCouldCloseFirst: yesNo({
    label: 'Active leaf could close first',
    group: 'pair',
    ask: 'Could the active leaf reach the frame before the inactive one?',
  }),
  mullion: yesNo({ label: 'Mullion', group: 'pair', ask: 'Is there a mullion between the leaves?' }),

  // ── Fire and smoke ──────────────────────────────────────────────────────────────────────────────────
  fireRatingMin: amount(
    { min: 0, max: 240, whole: true },
    {
      label: 'Fire rating of the door',
      group: 'fire',
      unit: 'min',
      ask: 'What fire rating must the door have, in minutes (0 = none)?',
      help: 'Minutes, never letters: a bare B may mean 60 or 90.',
    },
  ),
  fireLabel: choice(
    {
      seen: 'Seen and legible',
      illegible: 'Painted over or illegible',
      removed: 'Removed, its place can be seen',
      none: 'None found',
    },
    {
      label: 'Fire label',
      group: 'fire',
      ask: 'What do you see of the fire label on leaf and frame?',
      help: 'Look at the hinge edge of the leaf and at the hinge jamb; on some leaves it is on the top edge.',
    },
  ),
  frameLabelMin: amount(
    { min: 0, max: 240, whole: true },
    {
      label: 'Label on frame',
      group: 'fire',
      unit: 'min',
      ask: 'What does the label on the frame say, in minutes?',
    },
  ),
  wallRatingMin: amount(
    { min: 0, max: 240, whole: true },
    {
      label: 'Wall rating',
      group: 'fire',
      unit: 'min',
      ask: 'What is the wall rated, in minutes (0 = none)?',
    },
  ),
  wallKind: choice(
    {
      none: 'Ordinary, unrated',
      corridor: 'Corridor (fire partition)',
      otherPartition: 'Other fire partition',
      fireBarrier: 'Fire barrier',
      exitEnclosure: 'Exit stair, shaft or passageway',
      horizontalExit: 'Horizontal exit',
      fireWall: 'Fire wall',
      smokeBarrier: 'Smoke barrier',
      smokePartition: 'Smoke partition',
      exterior: 'Exterior wall',
    },
    { label: 'Kind of wall', group: 'fire', ask: 'What does the wall separate?' },
  ),
  smokeSeals: yesNo({
    label: 'Smoke-leakage label',
    group: 'fire',
    ask: 'Is it a smoke door (gasketed, S label)?',
  }),
  holdOpen: choice(
    {
      none: 'Not held open',
      detectorReleased: 'Held open, released by detection and power loss',
      heatOnly: 'Held open by a fusible link',
      wedge: 'Wedge, kick-down or friction arm',
    },
    { label: 'Hold-open', group: 'fire', ask: 'Is it held open, and what lets go?' },
  ),
  framePrepared: yesNo({
    label: 'Labeled frame made for the strike',
    group: 'fire',
    ask: 'Was the labeled frame made with the cutout that an electric strike needs?',
  }),
  leafPrepared: yesNo({
    label: 'Labeled leaf made for the lock',
    group: 'fire',
    ask: 'Was the leaf made with the preparation for the wanted lock or bar (a labeled leaf: under its label)?',
  }),
  inactiveLeafPrepared: yesNo({
    label: 'Labeled inactive leaf made for a strike',
    group: 'fire',
    ask: 'Was the edge of the labeled inactive leaf made with a cutout and a raceway for a strike?',
  }),
  fieldModificationApproved: yesNo({
    label: 'Cutting approved by the laboratory',
    group: 'fire',
    ask: 'Has the listing laboratory approved the planned cutting of the labeled leaf or frame in writing?',
  }),

  // ── Egress ──────────────────────────────────────────────────────────────────────────────────────────
  egressRole: choice(
    {
      exitAccess: 'Along the egress path of a room or corridor',
      exteriorExit: 'Exit door to the outside',
      stairEntry: 'Door into an exit stair',
      stairDischarge: 'Stair discharge to outside or lobby',
      horizontalExit: 'Horizontal exit',
      elevatorLobby: 'Elevator lobby to the tenant space',
      crossCorridor: 'Across a corridor',
      roofDoor: 'Roof door',
      dischargeGate: 'Gate on the way to the public street',
      egressCourt: 'Door or gate of an egress court',
      exteriorSpace: 'Door from a court or terrace back inside',
      convenience: 'Not required, but people can use it to leave',
      vehicleDoor: 'Vehicle door, not counted as egress',
      noOccupiedSpace: 'Serves nothing a person can occupy',
      sealedOff: 'Sealed off, no exit sign, no exit hardware',
    },
    {
      label: 'Egress role',
      group: 'egress',
      ask: 'What is its egress role?',
      help: 'Every door provided for egress counts, even one the plan does not need.',
    },
  ),
  exitDirection: choice(
    {
      towardSecure: 'From the egress side to the secure side',
      both: 'Both ways',
    },
    {
      label: 'Exit direction',
      group: 'egress',
      ask: 'In which direction do people leave through it?',
      help: 'The secure side is where a credential is read; people leave from the other side.',
    },
  ),
  occupantLoad: amount(
    { min: 0, max: 100000, whole: true },
    {
      label: 'Occupant load served',
      group: 'egress',
      unit: 'people',
      ask: 'How many people does it serve?',
      help: 'The calculated load of the room or space, not today’s headcount.',
    },
  ),
  mainDoor: yesNo({ label: 'Main door', group: 'egress', ask: 'Is it the main entrance door?' }),
  publicEntrance: yesNo({
    label: 'Public entrance',
    group: 'egress',
    ask: 'Does the public come in here?',
  }),
  exitSign: yesNo({ label: 'Exit sign', group: 'egress', ask: 'Is there an exit sign over it?' }),
  delayedDoorsOnPath: amount(
    { min: 0, max: 20, whole: true },
    {
      label: 'Other delayed doors on the path',
      group: 'egress',
      unit: 'doors',
      ask: 'How many other delayed-egress doors are in the same egress path?',
    },
  ),
  controlledDoorsOnPath: amount(
    { min: 0, max: 20, whole: true },
    {
      label: 'Other controlled doors on the path',
      group: 'egress',
      unit: 'doors',
      ask: 'How many other controlled-egress doors are in the same egress path before an exit?',
    },
  ),
  lobbyHasOtherExit: yesNo({
    label: 'Lobby has another exit',
    group: 'egress',
    ask: 'Can a person in the elevator lobby reach an exit without passing a locked door?',
  }),
  othersLeaveThroughRoom: yesNo({
    label: 'Others leave through this room',
    group: 'egress',
    ask: 'Does egress from another space lead through this room?',
  }),
  safeDispersalArea: yesNo({
    label: 'Safe dispersal area',
    group: 'egress',
    ask: 'Is there an accepted dispersal area inside the fence?',
  }),
  doorsInSeries: yesNo({
    label: 'Vestibule (doors in series)',
    group: 'egress',
    ask: 'Is there a second door right behind it?',
  }),
  seriesSpacingIn: amount(
    { min: 0, max: 1200 },
    {
      label: 'Clear distance between doors in series',
      group: 'egress',
      unit: 'in',
      ask: 'What is the clear distance between the two doors, not counting the leaf that swings in?',
    },
  ),
  clearWidthIn: amount(
    { min: 0, max: 240 },
    {
      label: 'Clear width measured',
      group: 'egress',
      unit: 'in',
      ask: 'What clear width does the open door leave?',
      help: 'On a pair: with the active leaf alone open. At a turnstile: the free width of the lane.',
    },
  ),
  barriersOverHalf: yesNo({
    label: 'Barriers take more than half',
    group: 'egress',
    ask: 'Where two or more exits are required, do grilles, turnstiles or revolving doors serve more than half of them, or more than half of the required width?',
  }),
  barrierHeightIn: amount(
    { min: 0, max: 144 },
    { label: 'Height of the turnstile', group: 'egress', unit: 'in', ask: 'How high is the turnstile?' },
  ),
  swingDoorBesideFt: amount(
    { min: 0, max: 1000 },
    {
      label: 'Distance to a swinging exit door',
      group: 'egress',
      unit: 'ft',
      ask: 'How far away is the nearest swinging door people can leave by, in the same wall or lobby?',
    },
  ),
  gateSupervised: yesNo({
    label: 'Gate watched while the public is in',
    group: 'egress',
    ask: 'Is the gate attended at all times while the public is inside?',
  }),
  accessibleRoute: yesNo({
    label: 'On an accessible route',
    group: 'egress',
    ask: 'Is it on an accessible route?',
  }),
  fireDepartmentAccess: yesNo({
    label: 'On the fire department’s access route',
    group: 'egress',
    ask: 'Does the fire department come in this way?',
  }),

  // ── Stair and roof ──────────────────────────────────────────────────────────────────────────────────
  stairLockWanted: choice(
    {
      none: 'Both sides stay open',
      stairSide: 'Lock against entry from the stair',
      floorSide: 'Lock against entry into the stair',
      both: 'Lock both sides',
    },
    { label: 'Lock on stair door', group: 'stair', ask: 'Which side of the stair door is to be locked?' },
  ),
  stairStories: amount(
    { min: 1, max: 200, whole: true },
    {
      label: 'Stories the stair serves',
      group: 'stair',
      unit: 'stories',
      ask: 'How many stories does the stair serve?',
    },
  ),
  stairReleasePoint: choice(
    {
      fireCommandCenter: 'Fire command center',
      mainEntrance: 'One point inside the main entrance',
      none: 'Nowhere',
    },
    {
      label: 'Stair doors released from',
      group: 'stair',
      ask: 'From where can all locked stair doors be released together?',
    },
  ),
  selectedReentry: yesNo({
    label: 'Selected re-entry floors',
    group: 'stair',
    ask: 'Is selected re-entry (NFPA 101) planned?',
  }),
  singleExitStair: yesNo({
    label: 'Building with a single exit stair',
    group: 'stair',
    ask: 'Is this stair the only exit, serving one tenant or unit directly?',
  }),
  reentryFloorTraps: yesNo({
    label: 'Re-entry floor locked around',
    group: 'stair',
    ask: 'Would tenant doors keep a person re-entering this floor from every other exit?',
  }),
  roofUse: choice(
    {
      unoccupied: 'Roof not occupied',
      occupied: 'Occupied roof or terrace',
      egressPath: 'Egress leads over the roof',
    },
    { label: 'Use of the roof', group: 'stair', ask: 'What is the roof used for?' },
  ),

  // ── Room and use ────────────────────────────────────────────────────────────────────────────────────
  roomUse: choice(
    {
      office: 'Office or ordinary room',
      suiteEntrance: 'Tenant or suite entrance',
      conference: 'Meeting or assembly room',
      classroom: 'Classroom or school office',
      dayCare: 'Day-care room',
      serverRoom: 'Server or data room',
      modularDataCenter: 'Modular data center',
      cashRoom: 'Cash, evidence or valuables room',
      pharmacy: 'Pharmacy or drug store',
      laboratory: 'Laboratory',
      storage: 'Storage room',
      equipment: 'Equipment room',
      electricalRoom: 'Electrical room',
      transformerVault: 'Transformer vault (required by the electrical code)',
      batteryRoom: 'Battery or energy-storage room',
      refrigerationMachinery: 'Refrigeration machinery room',
      elevatorMachineRoom: 'Elevator machine or control room',
      hazardousRoom: 'Boiler, laundry, fuel or other hazardous room',
      multiToilet: 'Multi-user restroom',
      singleToilet: 'Single-user restroom or bathing room',
      closet: 'Closet a person can enter',
      dwellingEntrance: 'Dwelling or sleeping-unit entrance',
      dwellingBedroom: 'Bedroom inside a dwelling or sleeping unit',
      unitBalcony: 'Balcony or deck of one unit',
      officeTerrace: 'Terrace of a private office, 250 ft² or less',
      patientRoom: 'Patient room on a corridor',
      patientUnit: 'Patient care unit exit',
      memoryCare: 'Memory-care unit exit',
      detention: 'Detention or holding',
      courtroom: 'Courtroom',
      stormShelter: 'Storm shelter',
      safeRoom: 'Safe room or vault meant to be locked on people',
      areaOfRefuge: 'Area of refuge or rescue',
      rescueElevatorLobby: 'Fire-service or occupant-evacuation elevator lobby',
      corridor: 'Corridor',
      lobby: 'Lobby or entrance hall',
      kitchen: 'Kitchen',
      parking: 'Parking',
      site: 'Outdoor site',
      other: 'Other',
    },
    {
      label: 'Room behind the door',
      group: 'use',
      ask: 'What is the room behind the door used for?',
      help: 'The room people leave through this door.',
    },
  ),
  occupancyGroup: choice(
    {
      'A-1': 'A-1',
      'A-2': 'A-2',
      'A-3': 'A-3',
      'A-4': 'A-4',
      'A-5': 'A-5',
      B: 'B',
      E: 'E',
      'F-1': 'F-1',
      'F-2': 'F-2',
      'H-1': 'H-1',
      'H-2': 'H-2',
      'H-3': 'H-3',
      'H-4': 'H-4',
      'H-5': 'H-5',
      'I-1.1': 'I-1, Condition 1',
      'I-1.2': 'I-1, Condition 2',
      'I-2': 'I-2',
      'I-3': 'I-3',
      'I-4': 'I-4',
      M: 'M',
      'R-1': 'R-1',
      'R-2': 'R-2',
      'R-3': 'R-3',
      'R-4': 'R-4',
      'S-1': 'S-1',
      'S-2': 'S-2',
      U: 'U',
    },
    {
      label: 'Occupancy group',
      group: 'use',
      scope: 'both',
      ask: 'Which occupancy group does the space belong to?',
    },
  ),
  roomAreaFt2: amount(
    { min: 0, max: 1000000 },
    { label: 'Room area', group: 'use', unit: 'ft²', ask: 'How large is the room?' },
  ),
  equipmentAmps: amount(
    { min: 0, max: 20000 },
    {
      label: 'Largest equipment rating',
      group: 'use',
      unit: 'A',
      ask: 'What is the largest equipment rated, in amperes?',
    },
  ),
  equipmentVolts: amount(
    { min: 0, max: 100000 },
    { label: 'Equipment voltage', group: 'use', unit: 'V', ask: 'What voltage does the equipment work at?' },
  ),
  equipmentWidthFt: amount(
    { min: 0, max: 200 },
    { label: 'Equipment width', group: 'use', unit: 'ft', ask: 'How wide is the equipment?' },
  ),
  overcurrentDevices: yesNo({
    label: 'Overcurrent, switching or control devices',
    group: 'use',
    ask: 'Does the room hold overcurrent, switching or control devices?',
  }),
  doorToWorkingSpaceFt: amount(
    { min: 0, max: 500 },
    {
      label: 'Door to working space',
      group: 'use',
      unit: 'ft',
      ask: 'How far is the door from the working space at the equipment?',
    },
  ),
  placeOfWorship: yesNo({
    label: 'Place of worship',
    group: 'use',
    scope: 'both',
    ask: 'Is it a place of religious worship?',
  }),
  agentFlooded: yesNo({
    label: 'Room protected by a gaseous agent',
    group: 'use',
    ask: 'Does a clean agent or carbon dioxide system flood the room in a fire?',
  }),
  shelterListingSeen: yesNo({
    label: 'Listing of the shelter assembly seen',
    group: 'use',
    ask: 'Has the listing of leaf, frame and this hardware as one tested shelter assembly been seen?',
  }),
  unitOccupantLoad: amount(
    { min: 0, max: 1000, whole: true },
    {
      label: 'Occupant load of the unit',
      group: 'use',
      unit: 'people',
      ask: 'How many people does the unit hold?',
    },
  ),
  unitSingleExit: yesNo({
    label: 'Unit may have one exit',
    group: 'use',
    ask: 'Is the unit allowed to have a single exit?',
  }),
  barricadeDevice: yesNo({
    label: 'Barricade device wanted',
    group: 'use',
    ask: 'Is a barricade device in use or asked for?',
  }),

  // ── Health care ─────────────────────────────────────────────────────────────────────────────────────
  clinicalNeed: choice(
    {
      none: 'None',
      containment: 'Patients must be contained for their care',
      securityThreat: 'Patients are a security threat',
      protection: 'Patients need protection (newborns, children, emergency care)',
    },
    { label: 'Clinical need', group: 'health', ask: 'Is there a recorded clinical need to keep people in?' },
  ),
  clinicalArea: choice(
    {
      none: 'Not a treatment area',
      psychiatric: 'Psychiatric treatment',
      cognitive: 'Cognitive (memory) treatment',
      nurseryObstetric: 'Nursery or obstetric',
      pediatric: 'Pediatric',
      emergency: 'Emergency',
      other: 'Other treatment area',
    },
    { label: 'Treatment area', group: 'health', ask: 'What kind of treatment area is it?' },
  ),
  abductionSystem: yesNo({
    label: 'Listed child-abduction system',
    group: 'health',
    ask: 'Is there a listed child-abduction security system?',
  }),
  staffCanUnlock: yesNo({
    label: 'All clinical staff can unlock',
    group: 'health',
    ask: 'Do all clinical staff carry the key or know the code at all times?',
  }),
  lockedUnitWatch: choice(
    {
      smokeDetection: 'Smoke detection throughout the locked unit',
      attended: 'An attended place in the unit from which the locks open',
      neither: 'Neither',
    },
    {
      label: 'Watch over the locked unit',
      group: 'health',
      ask: 'What detects a fire in the locked unit, or who can open its locks at any hour?',
    },
  ),
  bedsMoved: yesNo({
    label: 'Beds are moved through it',
    group: 'health',
    ask: 'Are patients moved through this door in their beds?',
  }),
  suiteDoor: choice(
    { none: 'Not a suite', perimeter: 'Suite entrance from the corridor', inside: 'Inside a suite' },
    { label: 'Health-care suite', group: 'health', ask: 'Does the door belong to a health-care suite?' },
  ),

  // ── What the owner wants ───────────────────────────────────────────────────────────────────────────
  control: choice(
    {
      controlled: 'Controlled',
      notControlled: 'Not controlled',
      asToday: 'As it is today',
    },
    {
      label: 'Wanted here',
      group: 'wishes',
      ask: 'What is wanted here?',
      help: 'Where nothing is wanted, nothing is bought; only what lets people out is still looked at.',
    },
  ),
  readerSides: choice(
    {
      none: 'No reader',
      secure: 'Reader on the secure side',
      both: 'Readers on both sides',
      recordOut: 'Reader in; the inside reader only records or shunts an alarm',
    },
    { label: 'Reader', group: 'wishes', scope: 'both', ask: 'Where is a credential read?' },
  ),
  securityNeed: choice(
    { low: 'Low', medium: 'Medium', high: 'High', critical: 'Critical' },
    { label: 'Security need', group: 'wishes', ask: 'How much must it resist?' },
  ),
  traffic: choice(
    { light: 'Light', medium: 'Medium', heavy: 'Heavy', extreme: 'Extreme' },
    { label: 'Traffic', group: 'wishes', ask: 'How often is it used?' },
  ),
  appearance: choice(
    { standard: 'Standard', visible: 'Seen by visitors', showpiece: 'Showpiece' },
    { label: 'Appearance', group: 'wishes', ask: 'How much does its appearance matter?' },
  ),
  wishDelayedEgress: yesNo({
    label: 'Delayed egress wanted',
    group: 'wishes',
    ask: 'Does the owner want leaving delayed by 15 seconds?',
  }),
  wishDelay30s: yesNo({
    label: 'Delay of 30 s wanted',
    group: 'wishes',
    ask: 'Does the owner want the delay at 30 seconds?',
  }),
  delay30sApproved: yesNo({
    label: '30 s approved',
    group: 'wishes',
    ask: 'Has the authority approved 30 seconds in writing?',
  }),
  wishNoDelaySign: yesNo({
    label: 'Delayed egress without a sign',
    group: 'wishes',
    ask: 'Does the owner want no sign at the delayed door?',
  }),
  wishControlledEgress: yesNo({
    label: 'Controlled egress wanted',
    group: 'wishes',
    ask: 'Are people to be kept in until staff let them out?',
  }),
  wishInterlock: yesNo({
    label: 'Interlock wanted',
    group: 'wishes',
    ask: 'Is this door one of an interlock (one opens only while the other is shut)?',
  }),
  interlockHoldsEgress: yesNo({
    label: 'Interlock can hold people in',
    group: 'wishes',
    ask: 'Can the interlock keep a leaf shut against a person leaving?',
  }),
  wishScheduledUnlock: yesNo({
    label: 'Scheduled unlock',
    group: 'wishes',
    ask: 'Is it to be unlocked at scheduled hours?',
  }),
  wishLockdown: yesNo({
    label: 'Lockdown',
    group: 'wishes',
    ask: 'Must it lock at once against an intruder?',
  }),
  wishAfterHoursMagnet: yesNo({
    label: 'Magnet after hours in place of a key lock',
    group: 'wishes',
    ask: 'Does the owner want a magnet armed after hours in place of a key lock?',
  }),
  wishUnlockOnAlarm: yesNo({
    label: 'Outside to unlock on fire alarm',
    group: 'wishes',
    ask: 'Does the owner want the outside to unlock on fire alarm?',
  }),
  wishKeyLock: yesNo({
    label: 'Key-operated lock on the egress side',
    group: 'wishes',
    ask: 'Does the owner want a lock that is keyed from inside?',
  }),
  wishGlassBareLook: yesNo({
    label: 'Nothing visible on the glass',
    group: 'wishes',
    ask: 'Must nothing show on the leaf?',
  }),

  // ── Site: power, path, surroundings ─────────────────────────────────────────────────────────────────
  powerAtDoor: yesNo({
    label: 'Power at the door',
    group: 'site',
    scope: 'both',
    ask: 'Is there lock power at the door, or can it be brought?',
    help: 'Answered once for the building where it holds for every door; a door without it gets its own answer.',
  }),
  cablePath: yesNo({
    label: 'Cable path to the frame',
    group: 'site',
    scope: 'both',
    ask: 'Is there a way to bring a cable to the frame?',
  }),
  leafRaceway: yesNo({
    label: 'Raceway in the leaf',
    group: 'site',
    ask: 'Is the leaf wired or cored from hinge to lock?',
  }),
  distanceToSupplyFt: amount(
    { min: 0, max: 5000 },
    {
      label: 'Cable run to supply',
      group: 'site',
      unit: 'ft',
      ask: 'How long is the cable run to the supply, one way?',
    },
  ),
  supplyVolts: choice(
    { '12': '12 V DC', '24': '24 V DC' },
    { label: 'Lock supply', group: 'site', scope: 'both', ask: 'Which lock voltage is used?' },
  ),
  lockPowerSource: choice(
    {
      dedicated: 'Listed access-control supply',
      fireAlarmPanel: 'Fire alarm panel',
      poe: 'Power over Ethernet',
      other: 'Other',
    },
    { label: 'Lock power comes from', group: 'site', ask: 'What powers the lock?' },
  ),
  standbyHours: amount(
    { min: 0, max: 96 },
    {
      label: 'Standby battery of the lock supply',
      group: 'site',
      scope: 'both',
      unit: 'h',
      ask: 'How many hours does the battery of the lock supply carry the lock?',
      help: 'Common practice is 4 h; no source sets it for every door.',
    },
  ),
  exterior: yesNo({ label: 'Exterior', group: 'site', ask: 'Is one side outdoors?' }),
  operator: choice(
    {
      none: 'None',
      lowEnergy: 'Low-energy operator',
      fullPower: 'Full-power operator',
      powerAssist: 'Power assist',
    },
    { label: 'Automatic operator', group: 'site', ask: 'Is there an automatic operator?' },
  ),
  breakaway: yesNo({
    label: 'Swing-out breakaway',
    group: 'site',
    ask: 'Do the sliding leaves swing out when pushed?',
  }),
  sensorTrippable: yesNo({
    label: 'Sensor can be tripped from outside',
    group: 'site',
    ask: 'Could a gap or glass let someone outside trip the exit sensor?',
  }),
  workStatus: choice(
    { new: 'New opening', altered: 'Existing, being altered', existing: 'Existing, not altered' },
    { label: 'New or existing', group: 'site', scope: 'both', ask: 'Is the opening new or existing?' },
  ),
  poolBarrierGate: yesNo({
    label: 'Gate in a pool barrier',
    group: 'site',
    ask: 'Is it a gate in a pool barrier?',
  }),

  // ── Building ────────────────────────────────────────────────────────────────────────────────────────
  sprinklered: yesNo({
    label: 'Sprinklered throughout',
    group: 'building',
    scope: 'building',
    ask: 'Is the building sprinklered throughout?',
  }),
  sprinklerKind: choice(
    {
      nfpa13: 'NFPA 13, full',
      nfpa13R: 'NFPA 13R, residential up to four stories',
      nfpa13D: 'NFPA 13D, one and two dwellings',
    },
    {
      label: 'Kind of sprinkler system',
      group: 'building',
      scope: 'building',
      ask: 'To which standard were the sprinklers built?',
      help: 'The plate at the riser or the drawings say so. Residential systems leave rooms out, so some sections do not count them.',
    },
  ),
  detectionThroughout: yesNo({
    label: 'Smoke or heat detection throughout',
    group: 'building',
    scope: 'building',
    ask: 'Is there approved automatic smoke or heat detection throughout?',
  }),
  fireAlarm: yesNo({
    label: 'Fire alarm system',
    group: 'building',
    scope: 'building',
    ask: 'Does the building have a fire alarm system?',
  }),
  voiceAlarm: yesNo({
    label: 'Emergency voice alarm',
    group: 'building',
    scope: 'building',
    ask: 'Does the alarm speak (emergency voice communication)?',
  }),
  highRise: yesNo({
    label: 'High-rise',
    group: 'building',
    scope: 'building',
    ask: 'Is the building a high-rise?',
  }),
  storiesAboveGrade: amount(
    { min: 1, max: 200, whole: true },
    {
      label: 'Stories',
      group: 'building',
      scope: 'building',
      unit: 'stories',
      ask: 'How many stories does the building have?',
    },
  ),
  buildingOccupantLoad: amount(
    { min: 0, max: 1000000, whole: true },
    {
      label: 'Occupant load of the building',
      group: 'building',
      scope: 'building',
      unit: 'people',
      ask: 'For how many people is the whole building calculated?',
    },
  ),
  fireCommandCenter: yesNo({
    label: 'Fire command center',
    group: 'building',
    scope: 'building',
    ask: 'Is there a fire command center?',
  }),
  attendedStation: yesNo({
    label: 'Constantly attended station',
    group: 'building',
    scope: 'building',
    ask: 'Is there a station that is always attended?',
  }),
  basisConfirmed: yesNo({
    label: 'Code basis confirmed',
    group: 'building',
    scope: 'building',
    ask: 'Has the adopted code and edition been confirmed with the authority?',
  }),
  amendmentsReviewed: yesNo({
    label: 'Local amendments reviewed',
    group: 'building',
    scope: 'building',
    ask: 'Have the local amendments been reviewed?',
  }),
  cityKeepsFourStoryLimit: yesNo({
    label: 'Local text keeps the four-story limit for locked stairs',
    group: 'building',
    scope: 'building',
    ask: 'Does the local code keep the four-story limit for locked stair doors?',
  }),
  cityKeepsPublicDisarm: yesNo({
    label: 'Local text asks sensor locks off while open to the public',
    group: 'building',
    scope: 'building',
    ask: 'Does the local code ask that sensor-released entrance locks are off while open to the public?',
  }),
  delayStartS: amount(
    { min: 0, max: 3 },
    {
      label: 'Longest push that starts a delay',
      group: 'building',
      scope: 'building',
      unit: 's',
      ask: 'How long may a person have to push before a delayed door starts its delay, by the adopted text?',
      help: 'The model text names 3 s. Some adopted texts name 1 s. The acceptance test is written with it.',
    },
  ),
  tia1436Adopted: yesNo({
    label: 'NFPA 101-2018 amended by TIA 1436',
    group: 'building',
    scope: 'building',
    ask: 'Is NFPA 101-2018 adopted together with its amendment TIA 1436 (two motions at existing classroom doors)?',
  }),
  oshaWorkplace: yesNo({
    label: 'Workplace under federal OSHA',
    group: 'building',
    scope: 'building',
    ask: 'Is it a workplace under federal OSHA?',
  }),
  federalHealthCare: yesNo({
    label: 'Federally funded health care',
    group: 'building',
    scope: 'building',
    ask: 'Is it a hospital or similar facility paid by federal programs?',
  }),
} as const;

export type FactKey = keyof typeof factSchemas;
export type FactValue<K extends FactKey> = z.infer<(typeof factSchemas)[K]>;
/** What any fact can hold, where its key is known only when the program runs. */
export type AnyValue = string | number | boolean;
export const isAnyValue = (value: unknown): value is AnyValue =>
  ['string', 'number', 'boolean'].includes(typeof value);
/** Values of facts by key; a key that is absent is unknown. */
export type FactValues = { readonly [K in FactKey]?: FactValue<K> };

export const factKeys = Object.keys(factSchemas) as readonly FactKey[];

export function isFactKey(text: string): text is FactKey {
  return Object.hasOwn(factSchemas, text);
}

/** Values with their keys, in the order in which they stand. */
export function valueEntries(values: FactValues): readonly (readonly [FactKey, AnyValue])[] {
  return Object.entries(values).flatMap(([key, value]) => (isFactKey(key) ? [[key, value] as const] : []));
}

export function fieldInfo(key: FactKey): FieldInfo {
  const info = fieldRegistry.get(factSchemas[key]);
  if (!info) throw new Error(`Field ${key} has no registered label.`);
  return info;
}

export const buildingFactKeys = factKeys.filter((key) => fieldInfo(key).scope !== 'opening');
export const openingFactKeys = factKeys.filter((key) => fieldInfo(key).scope !== 'building');
