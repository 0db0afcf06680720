import type { IbcEdition } from '../codes/basis.ts';
import type { Arrangement, Setting, Simulable } from '../arrangement/arrangement.ts';
import { buildingConditionIds, type ConditionId, conditionIds, doubleFaultIds } from './conditions.ts';
import { bySeverity, type OpeningFinding, type Outcomes } from './outcome.ts';
import { findingWords as words } from './sentences.ts';

type Find = (arrangement: Arrangement, setting: Setting, outcomes: Outcomes) => OpeningFinding | undefined;

/** What is wrong with an arrangement, seen from what happens and not from the rules that chose it. */
const finders: readonly Find[] = [
  function blockedExit(_arrangement, { personBehind, openWhileOccupied }, outcomes) {
    const blocked = whereTrue(
      outcomes,
      (one) =>
        one.exit === 'blocked' &&
        one.condition !== 'interlockFailed' &&
        !doubleFaultIds.includes(one.condition),
    );
    if (!personBehind || blocked.length === 0) return undefined;
    return openWhileOccupied
      ? { kind: 'blockedExit', severity: 'serious', conditions: blocked, says: words.keyedWhileOccupied }
      : { kind: 'blockedExit', severity: 'severe', conditions: blocked, says: words.blockedExit(blocked) };
  },

  // The section on sensor release asks for sensor, button and loss of power, and for alarm and sprinklers only where the
  // building has them. Two faults at once are more than it guards against, so they never forbid what it allows.
  function restsOnTwo({ alarmCuts }, { personBehind }, outcomes) {
    return personBehind && outcomes.exitReleasesFailed.exit === 'blocked'
      ? {
          kind: 'restsOnTwo',
          severity: alarmCuts ? 'note' : 'serious',
          conditions: ['exitReleasesFailed'],
          says: words.restsOnTwo(alarmCuts),
        }
      : undefined;
  },

  function interlockHolds(_arrangement, { personBehind }, outcomes) {
    return personBehind && outcomes.interlockFailed.exit === 'blocked'
      ? {
          kind: 'interlockHolds',
          severity: 'severe',
          conditions: ['interlockFailed'],
          says: words.interlockHolds,
        }
      : undefined;
  },

  function blockedOtherWay({ release, releaseOnBothSides }, { personBehind, peopleOnLockedSide }, outcomes) {
    // A lobby lock holds the people on that very side, and its exit column speaks of them already.
    if (!personBehind || !peopleOnLockedSide || release === 'lobby') return undefined;
    const locked = whereTrue(
      outcomes,
      // Staff and a delay let go of both sides, but not of a lever that is locked beside them.
      (one) =>
        one.entry === 'locked' &&
        !(releaseOnBothSides && (one.exit === 'byStaff' || one.exit === 'after')) &&
        buildingConditionIds.includes(one.condition),
    );
    return locked.length > 0
      ? {
          kind: 'blockedOtherWay',
          severity: 'severe',
          conditions: locked,
          says: words.blockedOtherWay(locked),
        }
      : undefined;
  },

  function ratedNotLatched(_arrangement, { rated }, outcomes) {
    if (!rated) return undefined;
    const loose = whereTrue(
      outcomes,
      (one) =>
        (one.condition === 'fireAlarm' || one.condition === 'fireAlarmMainsLost') && one.latched === 'no',
    );
    if (loose.length > 0) {
      return {
        kind: 'ratedNotLatched',
        severity: 'severe',
        conditions: loose,
        says: words.ratedNotLatched(loose),
      };
    }
    // No alarm, no detection: what stands unlatched by schedule stays so in a fire.
    return !outcomes.fireAlarm.applies && outcomes.unlockedHours.latched === 'no'
      ? {
          kind: 'ratedNotLatched',
          severity: 'severe',
          conditions: ['unlockedHours'],
          says: words.ratedNeverRelatched,
        }
      : undefined;
  },

  function ratedStaysOpen(_arrangement, { rated, staysOpen }) {
    return rated && staysOpen
      ? { kind: 'ratedStaysOpen', severity: 'severe', conditions: [], says: words.ratedStaysOpen }
      : undefined;
  },

  function stairUnderAlarm(_arrangement, setting, outcomes) {
    if (!setting.stairEntry || setting.loneStair || !alarmMustFreeStair(setting)) return undefined;
    if (!outcomes.fireAlarm.applies && outcomes.lockedHours.entry === 'locked') {
      return {
        kind: 'stairSideLocked',
        severity: 'severe',
        conditions: ['lockedHours'],
        says: words.stairNeverFreed,
      };
    }
    const locked = whereTrue(
      outcomes,
      (one) =>
        (one.condition === 'fireAlarm' || one.condition === 'fireAlarmMainsLost') && one.entry === 'locked',
    );
    return locked.length > 0
      ? { kind: 'stairSideLocked', severity: 'severe', conditions: locked, says: words.stairAlarm }
      : undefined;
  },

  function stairOnCommand(arrangement, { stairEntry, loneStair, basis }, outcomes) {
    if (!stairEntry || loneStair || basis.ibc === null || outcomes.lockedHours.entry !== 'locked') {
      return undefined;
    }
    return arrangement.commandCuts && outcomes.releaseCommand.entry === 'unlocked'
      ? undefined
      : {
          kind: 'stairSideLocked',
          severity: 'severe',
          conditions: ['releaseCommand'],
          says: words.stairCommand,
        };
  },

  function softwareOnly(_arrangement, { personBehind }, outcomes) {
    return personBehind &&
      outcomes.personLeaving.exit === 'free' &&
      outcomes.relayStuckLocked.exit === 'blocked'
      ? {
          kind: 'softwareOnly',
          severity: 'serious',
          conditions: ['relayStuckLocked'],
          says: words.softwareOnly,
        }
      : undefined;
  },

  function batteryHolds(arrangement, { personBehind, powerSource, basis }, outcomes) {
    const { release, batteryHours } = arrangement;
    const holds =
      personBehind &&
      basis.nfpa72 !== null &&
      powerSource === 'fireAlarmPanel' &&
      release !== 'free' &&
      release !== 'stairReentry' &&
      outcomes.mainsLost.entry === 'locked' &&
      (batteryHours === null || batteryHours > tenMinutesInHours);
    return holds
      ? {
          kind: 'batteryHolds',
          severity: 'serious',
          conditions: ['mainsLost'],
          says: words.batteryHolds(batteryHours),
        }
      : undefined;
  },

  function secureUnlocks(arrangement, { secure }, outcomes) {
    if (!secure || outcomes.lockedHours.entry !== 'locked' || outcomes.batterySpent.entry !== 'unlocked') {
      return undefined;
    }
    if (arrangement.release === 'stairReentry') {
      return {
        kind: 'secureUnlocks',
        severity: 'note',
        conditions: ['batterySpent'],
        says: words.secureUnlocksForStair,
      };
    }
    const atOnce = outcomes.mainsLost.entry === 'unlocked';
    return {
      kind: 'secureUnlocks',
      severity: 'serious',
      conditions: atOnce ? ['mainsLost', 'batterySpent'] : ['batterySpent'],
      says: words.secureUnlocks(arrangement.batteryHours, atOnce),
    };
  },

  function secureUnlocksOnAlarm(arrangement, { secure }, outcomes) {
    return secure &&
      arrangement.release !== 'stairReentry' &&
      outcomes.lockedHours.entry === 'locked' &&
      outcomes.fireAlarm.entry === 'unlocked'
      ? {
          kind: 'secureUnlocks',
          severity: 'note',
          conditions: ['fireAlarm'],
          says: words.secureUnlocksOnAlarm,
        }
      : undefined;
  },

  function operatorDrivesLatch({ latch }, { operatorDrives }) {
    return operatorDrives && latch === 'always'
      ? {
          kind: 'operatorDrivesLatch',
          severity: 'serious',
          conditions: ['validCredential'],
          says: words.operatorDrivesLatch,
        }
      : undefined;
  },

  function functionUnknown({ failMode }, { lockFunctionKnown }) {
    return failMode === 'none' && !lockFunctionKnown
      ? { kind: 'functionUnknown', severity: 'note', conditions: [], says: words.functionUnknown }
      : undefined;
  },
];

/** NFPA 72, 2007 text: how long panel batteries may keep such a door held. */
const tenMinutesInHours = 1 / 6;

/** Whether the edition asks the fire alarm to unlock a locked stair side; every edition says it by itself. */
const alarmFreesStair: Readonly<Record<IbcEdition, boolean>> = { 2018: false, 2021: false, 2024: true };

/** IBC 2024, and NFPA 101 where the stair serves more stories than may be locked without a release. */
function alarmMustFreeStair({ basis, stairStories, selectedReentry }: Setting): boolean {
  if (basis.ibc !== null && alarmFreesStair[basis.ibc]) return true;
  if (basis.nfpa101 === null) return false;
  const tall = stairStories === undefined || stairStories > 4;
  return tall && !(basis.ibc === null && selectedReentry);
}

function whereTrue(outcomes: Outcomes, holds: (one: Outcomes[ConditionId]) => boolean): ConditionId[] {
  return conditionIds.filter((id) => outcomes[id].applies && holds(outcomes[id]));
}

/** The worst first; equally bad ones in the order above. */
export function findingsOf(
  { arrangement, setting }: Simulable,
  outcomes: Outcomes,
): readonly OpeningFinding[] {
  const found: OpeningFinding[] = [];
  for (const find of finders) {
    const one = find(arrangement, setting, outcomes);
    if (one) found.push(one);
  }
  return found.toSorted(bySeverity);
}
