import type { CodeBasis } from '../../src/domain/codes/basis.ts';
import type { Decision } from '../../src/domain/decide/decision.ts';
import { partsOf } from '../../src/domain/hardware/parts.ts';
import { reportOf } from '../../src/domain/words/report.ts';
import { items, trades } from '../../src/domain/devices/items.ts';
import type { FactValues } from '../../src/domain/model/fields.ts';
import { buildingConditionIds, type ConditionId } from '../../src/domain/simulate/conditions.ts';
import type { Outcomes } from '../../src/domain/simulate/outcome.ts';
import { simulate } from '../../src/domain/decide/whatHappens.ts';
import type { Point } from './space.ts';

/**
 * What must hold of the arrangement that a settled decision leaves on the door: who is held, on which side, and what
 * frees them, said in the plain facts of the survey, the parts ordered and the outcomes. No rule is looked at, and
 * which locks hang on the leaf is worked out here a second time, so that a slip in the product shows as a difference.
 */
type Invariant = (at: Settled) => string | undefined;

interface Settled {
  readonly facts: FactValues;
  readonly basis: CodeBasis;
  readonly decision: Decision;
  readonly id: string;
  readonly outcomes: Outcomes;
  readonly parts: ReadonlyMap<string, number>;
}

const nobodyInside = ({ egressRole }: FactValues) =>
  egressRole === 'noOccupiedSpace' || egressRole === 'sealedOff';
const levers = ['bored', 'mortise', 'mortiseDeadbolt', 'boredPlusDeadbolt', 'deadlatch', 'gateLock'];
const bars = ['rimExit', 'verticalRods', 'rimPlusRods', 'railExit'];
const boltsOfTheirOwn = ['patch', 'hookbolt', 'deadboltOnly'];
const has = ({ parts }: Settled, ...wanted: readonly string[]) => wanted.some((item) => parts.has(item));

/** A lock of the leaf itself that the arrangement leaves there and that locks the outside by hand or key. */
function handLockOutside(at: Settled): boolean {
  const { facts, decision } = at;
  const { device, failMode, deviceId } = decision.chosen!.candidate;
  if (has(at, 'passageFunction')) return false;
  const stays =
    (device.family === 'mechanical' && failMode === 'none') || !replacesLock(device.family, deviceId);
  if (!stays) return false;
  if (device.family === 'mechanical') {
    return facts.lockFunction !== 'passage';
  }
  const latch = facts.latch ?? '';
  if (levers.includes(latch) || bars.includes(latch)) return facts.lockFunction !== 'passage';
  return boltsOfTheirOwn.includes(latch) && !has(at, 'lockTakenOff');
}
function replacesLock(family: string, deviceId: string): boolean {
  return !(
    family === 'magnet' ||
    (family === 'bolt' && deviceId !== 'glassPatchLock') ||
    deviceId === 'delayedMagnet'
  );
}

const atRest: readonly ConditionId[] = [
  'lockedHours',
  'batterySpent',
  'supplyLost',
  'fireAlarm',
  'relayStuckLocked',
];
const held = (outcomes: Outcomes, id: ConditionId) => outcomes[id].applies && outcomes[id].entry === 'locked';

/** People come to this door from the locked side too, and nothing else lets them go. */
function peopleOnLockedSide({ facts }: Settled): boolean {
  if (nobodyInside(facts) || facts.doorType === 'doubleEgressPair') return false;
  if (facts.egressRole === 'elevatorLobby' && facts.lobbyHasOtherExit === false) return true;
  const { egressRole } = facts;
  return facts.exitDirection === 'both' && egressRole !== 'stairEntry' && egressRole !== 'stairDischarge';
}

/** Panic hardware is due wherever a latch or lock will be, by group, load and use alone. */
function barIsDue({ facts, basis, id }: Settled): boolean {
  if (nobodyInside(facts)) return false;
  if (id.startsWith('noLock/') && facts.latch === 'pushPull') return false;
  const group = facts.occupancyGroup ?? '';
  const crowd = /^A-|^E$/.test(group);
  const load = facts.occupantLoad ?? 0;
  if (basis.ibc !== null && ((crowd && load >= 50) || group.startsWith('H-'))) return true;
  if (basis.nfpa101 !== null && ((crowd && load >= 100) || (group.startsWith('H-') && load > 5))) return true;
  return (
    facts.roomUse === 'refrigerationMachinery' && (facts.roomAreaFt2 ?? 0) > 1000 && (basis.ibc ?? 0) >= 2021
  );
}

export const outcomeInvariants: Readonly<Record<string, Invariant>> = {
  'nobody in a stair is held without a release on command': (at) => {
    const { facts, basis, outcomes } = at;
    if (facts.egressRole !== 'stairEntry' || basis.ibc === null) return undefined;
    if (handLockOutside(at)) return 'a lock that only a key frees holds the stair side';
    if (!held(outcomes, 'lockedHours')) return undefined;
    if (!outcomes.releaseCommand.applies || held(outcomes, 'releaseCommand'))
      return 'no command frees the stair side';
    return basis.ibc >= 2024 && held(outcomes, 'fireAlarm')
      ? 'the alarm leaves the stair side locked'
      : undefined;
  },

  'a stair side that stays open is not locked': (at) => {
    const { stairLockWanted, egressRole } = at.facts;
    if (egressRole !== 'stairEntry' || (stairLockWanted !== 'none' && stairLockWanted !== 'floorSide'))
      return undefined;
    return handLockOutside(at) || held(at.outcomes, 'lockedHours') ? 'the stair side is locked' : undefined;
  },

  'the last door of a stair is locked only against those outside': ({ facts, basis, outcomes }) => {
    if (facts.egressRole !== 'stairDischarge' || basis.ibc === null) return undefined;
    const wrong = buildingConditionIds.find((id) => outcomes[id].applies && outcomes[id].exit !== 'free');
    return wrong ? `${wrong}: leaving is ${outcomes[wrong].exit}` : undefined;
  },

  'nobody is shut in a lobby, corridor or horizontal exit': (at) => {
    const { outcomes, decision } = at;
    if (!peopleOnLockedSide(at)) return undefined;
    if (handLockOutside(at)) return 'a lock that only a key frees holds the other way';
    const { release } = decision.chosen!.candidate;
    // These let go of both sides at once; who is held is let out by the alarm and by staff.
    const bySpecialRelease =
      release === 'lobby' || release === 'controlled' || release === 'attended' || has(at, 'delayBothSides');
    const wrong = atRest.find(
      (id) =>
        held(outcomes, id) &&
        // Held by staff or a delay on both sides alike; whoever is free on one side is free on the other.
        !(bySpecialRelease && ['byStaff', 'after'].includes(outcomes[id].exit)) &&
        !(release === 'clinical' && outcomes[id].exit === 'byStaff'),
    );
    return wrong ? `${wrong}: the other way is locked` : undefined;
  },

  'nobody is held where a bar is due': (at) => {
    if (!barIsDue(at)) return undefined;
    const { facts, outcomes, decision } = at;
    const { device, release } = decision.chosen!.candidate;
    if (release === 'keyInside') return undefined;
    const bar = device.exitDevice || facts.panicPresent === true || bars.includes(facts.latch ?? '');
    if (!bar && !has(at, 'panicHardware', 'fireExitHardware')) return 'no bar';
    const other = [...levers, ...boltsOfTheirOwn].includes(facts.latch ?? '');
    if (other && !replacesLock(device.family, decision.chosen!.candidate.deviceId))
      return 'the old lock stays';
    return outcomes.personLeaving.exit === 'blocked' ? 'blocked' : undefined;
  },

  'a credential opens what it is read for': (at) => {
    const { facts, outcomes, decision } = at;
    const { readerSides } = facts;
    if (readerSides === undefined || readerSides === 'none' || !decision.chosen!.candidate.device.wired)
      return undefined;
    return handLockOutside(at) || held(outcomes, 'validCredential')
      ? 'the credential opens nothing'
      : undefined;
  },

  'what says that it releases does so': ({ id, outcomes }) =>
    /\/(sensor|doorSwitch|buttonOnly)$/.test(id) && outcomes.personLeaving.exit !== 'free'
      ? `${id}: leaving is ${outcomes.personLeaving.exit}`
      : undefined,

  'hardware out of reach is moved, whatever is chosen': ({ facts, decision }) => {
    const height = facts.egressHardwareHeightIn;
    if (nobodyInside(facts) || height === undefined || (height >= 34 && height <= 48)) return undefined;
    if (facts.workStatus === 'existing' && facts.leafMaterial === 'glassFrameless') return undefined;
    return decision.modifies.some((step) => step.rule.id === 'R-09') ? undefined : `stays at ${height} in`;
  },

  'on a pair each leaf is held and freed as the arrangement says': (at) => {
    const { facts, parts, decision } = at;
    if (facts.doorType !== 'pair') return undefined;
    const { device, release } = decision.chosen!.candidate;
    if (facts.inactiveBolts === 'manualFlush' && !has(at, 'automaticFlushBolts')) {
      for (const item of ['doorSwitchHardware', 'panicHardware', 'delayedExitDevice'])
        if ((parts.get(item) ?? 0) > 1) return `${item} on a leaf with hand-worked bolts`;
    }
    const eachByItself = facts.inactiveBolts === 'rods' || facts.inactiveBolts === 'rim';
    if (eachByItself && (release === 'delayed' || release === 'controlled')) {
      const devices = ['delayedExitDevice', 'delayedMagnet', 'magnetLock', 'mortiseLock', 'cylindricalLock'];
      const count =
        Math.max(...devices.map((item) => parts.get(item) ?? 0)) + (parts.get('doubleMagnet') ?? 0);
      if (count < 2) return `${device.family} holds one leaf of two`;
    }
    return undefined;
  },

  'each trade of a required item has its line of work': ({ decision }) => {
    const lines = new Set(reportOf(decision).work.map((one) => one.trade));
    for (const { clause, rule } of decision.requires) {
      if (clause.effect !== 'require') continue;
      for (const item of clause.items) {
        const { trade } = items[item];
        if (!lines.has(trades[trade])) return `${rule.id} asks for ${item}, and ${trades[trade]} has no line`;
      }
    }
    return undefined;
  },

  'a settled arrangement has no severe finding': ({ decision }) =>
    simulate(decision)?.findings.find((one) => one.severity === 'severe')?.says,
};

/** What is broken at one opening, by the name of the invariant; nothing while it is not settled. */
export function brokenOutcomes(
  { facts, basis }: Point,
  decision: Decision,
): readonly (readonly [string, string])[] {
  if (!decision.stands || !decision.chosen) return [];
  const simulated = simulate(decision);
  if (!simulated) return [];
  const at: Settled = {
    facts,
    basis,
    decision,
    id: decision.chosen.candidate.id,
    outcomes: simulated.outcomes,
    parts: new Map(partsOf(decision).map((part) => [part.item as string, part.quantity])),
  };
  return Object.entries(outcomeInvariants).flatMap(([name, invariant]) => {
    const says = invariant(at);
    return says === undefined ? [] : [[name, `${at.id}: ${says}`] as const];
  });
}
