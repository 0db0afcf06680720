import type { CodeBasis } from '../codes/basis.ts';
import { basisKey } from '../codes/basis.ts';
import { compile, type Test } from './compile.ts';
import { type Slots, slotOf } from './slots.ts';
import {
  all,
  any,
  atLeast,
  type Condition,
  ibc,
  is,
  isKnown,
  nec,
  nfpa101,
  no,
  not,
  over,
  under,
  yes,
} from './condition.ts';
import { type DerivedKey, derivedKeys } from './derivedKeys.ts';
import { planKeys } from './planKeys.ts';
import { UNKNOWN, YES } from './verdict.ts';

const groupA = is('occupancyGroup', 'A-1', 'A-2', 'A-3', 'A-4', 'A-5');
const groupE = is('occupancyGroup', 'E');
const groupH = is('occupancyGroup', 'H-1', 'H-2', 'H-3', 'H-4', 'H-5');
/** A push/pull leaf is outside the panic rules only while nobody adds a lock; a reader means that one is added. */
const latchesOrLocks = not(all(is('latch', 'pushPull'), is('readerSides', 'none')));

/** Spaces whose doors may carry no lock or latch but panic hardware, whatever is on the leaf today. */
export const panicSpaces = {
  /** Group A or E space at or over the load; a watched stadium gate with a dispersal area is let off. */
  ibcAssemblyOrEducation: all(
    ibc(),
    yes('isEgress'),
    yes('isSwinging'),
    any(groupA, groupE),
    atLeast('occupantLoad', 'panicLoadIbc'),
    not(
      all(
        is('doorType', 'gateSwing'),
        is('occupancyGroup', 'A-4', 'A-5'),
        yes('safeDispersalArea'),
        yes('gateSupervised'),
      ),
    ),
  ),
  /** Group H, any load. */
  ibcHighHazard: all(ibc(), yes('isEgress'), yes('isSwinging'), groupH),
  /** NFPA 101 assembly, educational, day care; high hazard. */
  nfpaLoads: all(
    nfpa101(),
    yes('isEgress'),
    any(
      all(
        any(groupA, groupE, is('occupancyGroup', 'I-4'), is('roomUse', 'dayCare')),
        atLeast('occupantLoad', 'panicLoadNfpa'),
      ),
      all(groupH, over('occupantLoad', 'panicLoadHighHazardNfpa')),
    ),
  ),
} as const satisfies Record<string, Condition>;

/** Large equipment can stand in any room; where none was entered, only electrical and equipment rooms are asked. */
const mayHoldLargeEquipment = any(
  is('roomUse', 'electricalRoom', 'equipment'),
  isKnown('equipmentAmps'),
  isKnown('equipmentVolts'),
);
/** Coiling doors that let equipment in are not the doors that people leave by. */
const personnelDoor = not(is('doorType', 'overhead', 'grille'));

/** Why panic hardware can be required, by the rule that says so; the rules and the derived fact share one text. */
export const panicTriggers = {
  /** */
  ibcAssemblyOrEducation: all(panicSpaces.ibcAssemblyOrEducation, latchesOrLocks),
  /** */
  ibcHighHazard: all(panicSpaces.ibcHighHazard, latchesOrLocks),
  /** */
  nfpaLoads: all(panicSpaces.nfpaLoads, latchesOrLocks),
  /** R-76 (a): vaults, battery rooms, modular data centers, whatever the distance. */
  electricalRoomAnyDistance: all(
    any(ibc({ from: 2021, readTo: 2024 }), nec()),
    is('roomUse', 'transformerVault', 'batteryRoom', 'modularDataCenter'),
    personnelDoor,
  ),
  /** R-76 (b), (c): large equipment with the door near the working space. */
  electricalRoomNear: all(
    mayHoldLargeEquipment,
    under('doorToWorkingSpaceFt', 'panicWorkingSpaceFt'),
    any(
      all(nec(), atLeast('equipmentAmps', 'panicAmpsNec'), yes('overcurrentDevices')),
      all(
        ibc({ from: 2021, readTo: 2024 }),
        atLeast('equipmentAmps', 'panicAmpsIbc'),
        yes('overcurrentDevices'),
      ),
      all(nec(), over('equipmentVolts', 'panicVoltsNec')),
    ),
    personnelDoor,
  ),
  /** the IBC of 2018 has a higher figure, a width and no distance. */
  electricalRoomOldIbc: all(
    ibc({ to: 2018 }),
    any(is('roomUse', 'electricalRoom', 'equipment'), isKnown('equipmentAmps')),
    atLeast('equipmentAmps', 'panicAmpsIbc'),
    over('equipmentWidthFt', 6),
    yes('overcurrentDevices'),
    personnelDoor,
  ),
  /** refrigeration machinery room over 1,000 ft²; the IBC of 2018 does not name it. */
  refrigerationMachinery: all(
    ibc({ from: 2021, readTo: 2024 }),
    is('roomUse', 'refrigerationMachinery'),
    over('roomAreaFt2', 'refrigerationRoomAreaIbc'),
  ),
} as const satisfies Record<string, Condition>;

/** Groups whose buildings may have a system of NFPA 13R or 13D. */
const mayBeResidential = is('occupancyGroup', 'R-1', 'R-2', 'R-3', 'R-4', 'I-1.1', 'I-4');
const residentialSystem = is('sprinklerKind', 'nfpa13R', 'nfpa13D');

/**
 * Doors that people may come to from both sides to leave. The door of a room is left by whoever is in the room, an exit
 * door by whoever is in the building: there nobody is asked which way.
 */
export const mayBeLeftBothWays = any(
  is('egressRole', 'crossCorridor', 'horizontalExit', 'exteriorSpace', 'egressCourt', 'convenience'),
  all(is('egressRole', 'exitAccess'), is('roomUse', 'corridor', 'lobby')),
);

/** The same wherever a lock is put on the leaf, whatever hangs there today: what the choice brings counts, not the survey. */
const panicWithLock = any(
  ...Object.values(panicSpaces),
  panicTriggers.electricalRoomAnyDistance,
  panicTriggers.electricalRoomNear,
  panicTriggers.electricalRoomOldIbc,
  panicTriggers.refrigerationMachinery,
);

const definitions: Record<DerivedKey, Condition> = {
  // An unknown role stays unknown here; R-10 then treats the door as an egress door.
  isEgress: not(is('egressRole', 'noOccupiedSpace', 'vehicleDoor', 'sealedOff')),
  // Wall and door are asked apart; a missing label never removes the duty.
  fireRated: any(
    over('fireRatingMin', 0),
    all(over('wallRatingMin', 0), not(is('wallKind', 'none', 'smokePartition'))),
  ),
  isPair: is('doorType', 'pair', 'doubleEgressPair'),
  isSwinging: is('doorType', 'single', 'pair', 'doubleEgressPair', 'doubleActing', 'balanced', 'gateSwing'),
  isStairDoor: is('egressRole', 'stairEntry', 'stairDischarge'),
  stairSideToLock: all(is('egressRole', 'stairEntry'), is('stairLockWanted', 'stairSide', 'both')),
  floorSideToLock: all(is('egressRole', 'stairEntry'), is('stairLockWanted', 'floorSide', 'both')),
  groupA,
  groupE,
  groupH,
  groupI: is('occupancyGroup', 'I-1.1', 'I-1.2', 'I-2', 'I-3', 'I-4'),
  hasExitDevice: any(yes('panicPresent'), is('latch', 'rimExit', 'verticalRods', 'rimPlusRods', 'railExit')),
  panicRequired: any(...Object.values(panicTriggers)),
  panicWithLock,
  wantsReader: not(is('readerSides', 'none')),
  // IBC 903.3.1.1; a residential system is asked about only where one may have been built.
  fullSprinklers: all(
    yes('sprinklered'),
    not(any(all(mayBeResidential, residentialSystem), all(isKnown('sprinklerKind'), residentialSystem))),
  ),
  // A double-egress pair has a leaf for each way, a lobby with its own exit needs no other, and a door into a stair has
  // its own rules. Where nobody is asked, two ways of leaving count once somebody says so.
  peopleOnLockedSide: any(
    all(is('egressRole', 'elevatorLobby'), no('lobbyHasOtherExit')),
    all(
      is('exitDirection', 'both'),
      any(
        mayBeLeftBothWays,
        all(
          isKnown('exitDirection'),
          is('egressRole', 'exitAccess', 'exteriorExit', 'dischargeGate', 'stairDischarge', 'roofDoor'),
        ),
      ),
      not(is('doorType', 'doubleEgressPair')),
    ),
  ),
};

export function derivedDefinition(key: DerivedKey): Condition {
  return definitions[key];
}

type Compiled = readonly { readonly slot: number; readonly test: Test }[];
const compiledByKey = new Map<string, Compiled>();
/** The same by object: a project keeps its basis, and making a key costs more than a few of the tests. */
const compiledByBasis = new WeakMap<CodeBasis, Compiled>();

function compiledDerived(basis: CodeBasis): Compiled {
  const before = compiledByBasis.get(basis);
  if (before) return before;
  const key = basisKey(basis);
  let compiled = compiledByKey.get(key);
  if (!compiled) {
    compiled = derivedKeys.map((name) => ({
      slot: slotOf(name),
      test: compile(definitions[name], basis, `derived fact ${name}`),
    }));
    compiledByKey.set(key, compiled);
  }
  compiledByBasis.set(basis, compiled);
  return compiled;
}

const planSlots = planKeys.map(slotOf);

/**
 * Fills the derived slots in place, in the order of `derivedKeys`: a later one may read an earlier one. What the plan
 * was not found to say otherwise does not differ.
 */
export function fillDerived(slots: Slots, basis: CodeBasis): void {
  for (const slot of planSlots) slots[slot] ??= false;
  const compiled = compiledDerived(basis);
  for (let index = 0; index < compiled.length; index++) {
    const { slot, test } = compiled[index] as Compiled[number];
    const verdict = test(slots);
    slots[slot] = verdict === UNKNOWN ? undefined : verdict === YES;
  }
}
