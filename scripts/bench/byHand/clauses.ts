import type { Facts } from '../../../src/domain/model/fact.ts';
import { type Answer, and, atLeast, atMost, is, not, oneOf, or, over, under } from './answer.ts';
import { doorAsSurveyed } from './door.ts';
import {
  assemblyPanic,
  exitDevice,
  fireRated as ratedAt,
  groupA,
  groupH,
  groupI,
  highHazardPanic,
  lifeSafetyPanic,
  panicRequired as panicRequiredAt,
  wayOut,
  wiredOrLatched,
} from './panic.ts';

const notSwinging = [
  'slidingAutomatic',
  'folding',
  'revolving',
  'overhead',
  'grille',
  'gateSlide',
  'turnstile',
  'turnstileFull',
  'turnstileSecurity',
] as const;
const outsideOrPassage = [
  'exitAccess',
  'exteriorExit',
  'exteriorSpace',
  'egressCourt',
  'dischargeGate',
] as const;
const oneStairGroups = ['B', 'F-1', 'F-2', 'M', 'S-1', 'S-2', 'R-2'] as const;
const lowHazardWork = ['F-1', 'F-2', 'S-1', 'S-2', 'U'] as const;

/**
 * Fifty-one clauses of the rule book as somebody would write them who never wanted more than this one function, for
 * IBC 2021 with NFPA 101 2021 and NEC 2020. Written from the conditions in `src/domain/rules`; when a condition is
 * changed there, the benchmark stops at the first opening on which the two no longer agree.
 */
export function answersByHand(facts: Facts) {
  const door = doorAsSurveyed(facts);
  const { doorType, occupancyGroup, roomUse, latch, leafMaterial, workStatus, occupantLoad } = door;
  const { sprinklered, detectionThroughout, fireAlarm, readerSides, operator, wallRatingMin } = door;
  const { clearWidthIn, leafThicknessIn, strikePrep, stairStories, egressHardwareHeightIn } = door;

  const egress = wayOut(door);
  const fireRated = ratedAt(door);
  const hasExitDevice = exitDevice(door);
  const noExitDevice = not(hasExitDevice);
  const locked = wiredOrLatched(door);
  const panicRequired = panicRequiredAt(door);
  const stairSideLocked = and(
    is(door.egressRole, 'stairEntry'),
    oneOf(door.stairLockWanted, ['stairSide', 'both']),
  );
  const onlyStair = door.singleExitStair === true;
  const detected = or(sprinklered, detectionThroughout);
  const classroom = oneOf(roomUse, ['classroom', 'dayCare']);
  const hazardous = groupH(door);

  return {
    'R-01b': and(
      is(door.exitDirection, 'both'),
      or(
        is(door.egressRole, 'crossCorridor'),
        and(door.exitDirection !== null, oneOf(door.egressRole, outsideOrPassage)),
      ),
      not(is(doorType, 'doubleEgressPair')),
    ),
    'R-04b': and(egress, is(readerSides, 'both')),
    'R-08a': and(
      egress,
      is(latch, 'boredPlusDeadbolt'),
      not(
        or(
          and(is(roomUse, 'dwellingEntrance'), oneOf(occupancyGroup, ['R-1', 'R-2', 'R-3'])),
          is(roomUse, 'dwellingBedroom'),
          is(roomUse, 'detention'),
          is(occupancyGroup, 'I-3'),
        ),
      ),
    ),
    'R-09a': and(
      egress,
      egressHardwareHeightIn !== null,
      or(
        under(egressHardwareHeightIn, 34),
        and(
          over(egressHardwareHeightIn, 48),
          not(
            and(
              oneOf(doorType, ['gateSwing', 'gateSlide']),
              door.poolBarrierGate,
              atMost(egressHardwareHeightIn, 54),
            ),
          ),
        ),
      ),
      not(
        and(
          oneOf(workStatus, ['existing', 'altered']),
          or(is(leafMaterial, 'glassFrameless'), oneOf(doorType, ['overhead', 'grille'])),
        ),
      ),
    ),
    'R-16c': and(egress, detected),
    'R-17b': oneOf(doorType, notSwinging),
    'R-18a': panicRequired,
    'R-19': and(egress, hazardous),
    'R-33b': and(fireRated, door.wishScheduledUnlock, not(fireAlarm), not(detectionThroughout)),
    'R-34a': and(fireRated, or(hasExitDevice, panicRequired)),
    'R-36a': and(fireRated, is(door.closing, 'none')),
    'R-37a': and(fireRated, oneOf(latch, ['deadboltOnly', 'hookbolt'])),
    'R-38a': and(fireRated, oneOf(latch, ['roller', 'pushPull'])),
    'R-55c': and(
      stairSideLocked,
      not(and(onlyStair, oneOf(occupancyGroup, oneStairGroups))),
      is(door.stairReleasePoint, 'mainEntrance'),
      or(door.fireCommandCenter, door.highRise),
    ),
    'R-57a': and(stairSideLocked, door.cityKeepsFourStoryLimit, over(stairStories, 4), not(door.highRise)),
    'R-58a': and(stairSideLocked, over(stairStories, 4), !onlyStair),
    'R-69d': and(assemblyPanic(door), noExitDevice),
    'R-70a': and(highHazardPanic(door), locked, noExitDevice),
    'R-71a': and(lifeSafetyPanic(door), locked, noExitDevice),
    'R-82a': and(
      groupA(door),
      not(and(is(occupancyGroup, 'A-3'), is(roomUse, 'courtroom'), not(door.mainDoor), sprinklered)),
    ),
    'R-83a': and(is(occupancyGroup, 'E'), not(and(is(roomUse, 'classroom'), under(occupantLoad, 50)))),
    'R-84': not(detected),
    'R-87a': and(not(groupI(door)), atLeast(door.delayedDoorsOnPath, 1)),
    'R-98b': and(oneOf(roomUse, ['serverRoom', 'modularDataCenter']), is(readerSides, 'both')),
    'R-100a': and(door.wishInterlock, door.interlockHoldsEgress, not(is(occupancyGroup, 'I-3'))),
    'R-101e': and(classroom, door.wishLockdown, or(door.panicPresent, fireRated)),
    'R-116b': and(
      egress,
      or(fireAlarm, detected),
      not(oneOf(door.clinicalArea, ['psychiatric', 'cognitive'])),
    ),
    'R-118': and(stairSideLocked, not(over(stairStories, 4))),
    'R-122b': and(oneOf(operator, ['lowEnergy', 'fullPower']), fireAlarm, fireRated),
    'R-123b': is(door.clinicalNeed, 'none'),
    'R-126e': and(egress, not(door.swingsWithEgress), not(and(door.wishDelay30s, door.delay30sApproved))),
    'R-127a': and(egress, door.othersLeaveThroughRoom),
    'R-135d': and(
      egress,
      is(doorType, 'overhead'),
      not(
        and(
          not(hazardous),
          or(oneOf(roomUse, ['office', 'storage']), oneOf(occupancyGroup, lowHazardWork)),
          atMost(occupantLoad, 10),
        ),
      ),
    ),
    'R-136d': and(
      egress,
      is(doorType, 'turnstile'),
      over(occupantLoad, 300),
      over(door.swingDoorBesideFt, 50),
    ),
    'R-137d': and(egress, is(doorType, 'turnstileSecurity'), under(clearWidthIn, 32), over(occupantLoad, 50)),
    'R-147a': and(is(roomUse, 'closet'), not(oneOf(latch, ['pushPull', 'roller']))),
    'R-149c': and(is(roomUse, 'stormShelter'), or(door.wishUnlockOnAlarm, door.wishScheduledUnlock)),
    'R-155': and(
      oneOf(doorType, ['pair', 'doubleEgressPair']),
      oneOf(door.inactiveBolts, ['manualFlush', 'constantLatching']),
      door.inactiveNeededForCapacity,
    ),
    'R-157c': and(
      door.accessibleRoute,
      oneOf(operator, ['lowEnergy', 'fullPower', 'powerAssist']),
      under(clearWidthIn, 32),
    ),
    'R-163': and(
      is(workStatus, 'existing'),
      or(
        and(
          fireRated,
          or(
            is(door.closing, 'none'),
            oneOf(latch, ['pushPull', 'roller']),
            oneOf(door.fireLabel, ['illegible', 'removed', 'none']),
          ),
        ),
        and(panicRequired, noExitDevice),
        and(clearWidthIn !== null, under(clearWidthIn, 32)),
        and(fireRated, is(door.inactiveBolts, 'manualFlush')),
      ),
    ),
    'F-01f': and(is(strikePrep, 'aluminium458'), not(is(door.frameMaterial, 'aluminium'))),
    'F-04a': and(
      not(oneOf(leafMaterial, ['glassFrameless', 'chainLink', 'rollingSteel'])),
      under(leafThicknessIn, 1.75),
      atLeast(leafThicknessIn, 1.375),
    ),
    'F-06a': and(is(leafMaterial, 'glassFrameless'), oneOf(door.glassRails, ['none', 'top'])),
    'T-18': and(
      is(door.frameMaterial, 'hollowMetal'),
      door.frameGrouted === null,
      not(is(workStatus, 'new')),
    ),
    'T-19': and(
      fireRated,
      oneOf(workStatus, ['altered', 'existing']),
      oneOf(strikePrep, ['none', 'light234', 'residential', 'aluminium458']),
      not(door.framePrepared),
    ),
    'T-21b': and(is(leafMaterial, 'aluminiumNarrow'), not(oneOf(latch, ['deadlatch', 'hookbolt']))),
    'N-03': and(
      and(is(readerSides, 'none'), not(door.wishScheduledUnlock), not(door.wishLockdown)),
      and(not(door.wishDelayedEgress), not(door.wishControlledEgress), not(door.wishInterlock)),
      not(stairSideLocked),
      is(operator, 'none'),
    ),
    'N-08b': or(
      fireRated,
      is(roomUse, 'patientRoom'),
      door.suiteDoor === null ? false : door.suiteDoor === 'perimeter',
    ),
    'B-02a': and(
      oneOf(leafMaterial, ['aluminiumMedium', 'aluminiumWide']),
      over(door.fireRatingMin, 0),
      door.fireLabel !== 'seen',
    ),
    'B-07': and(
      is(door.wallKind, 'fireBarrier'),
      or(
        and(atLeast(wallRatingMin, 60), under(door.fireRatingMin, 45)),
        and(over(wallRatingMin, 60), under(door.fireRatingMin, 90)),
        and(over(wallRatingMin, 120), under(door.fireRatingMin, 180)),
      ),
    ),
    'B-11': and(
      is(door.wallKind, 'fireWall'),
      or(
        and(over(wallRatingMin, 60), under(door.fireRatingMin, 90)),
        and(over(wallRatingMin, 120), under(door.fireRatingMin, 180)),
      ),
    ),
  } satisfies Record<string, Answer>;
}

export type ByHand = ReturnType<typeof answersByHand>;
