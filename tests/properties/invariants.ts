import type { Decision } from '../../src/domain/decide/decision.ts';
import type { Release } from '../../src/domain/devices/candidates.ts';
import type { ItemId } from '../../src/domain/devices/items.ts';
import type { FactValues } from '../../src/domain/model/fields.ts';
import { partsOf } from '../../src/domain/hardware/parts.ts';
import type { Point } from './space.ts';

/**
 * What must hold of any recommendation, written down without looking at the rules: plain statements over the
 * facts of the opening and the answer. Each returns a sentence when it is broken.
 */
type Invariant = (point: Point, decision: Decision) => string | undefined;

const noOneInside = (facts: FactValues) =>
  facts.egressRole === 'noOccupiedSpace' || facts.egressRole === 'sealedOff';
const isA = (facts: FactValues) => facts.occupancyGroup?.startsWith('A-') ?? false;
const isH = (facts: FactValues) => facts.occupancyGroup?.startsWith('H-') ?? false;
const protectedBuilding = (facts: FactValues) =>
  facts.sprinklered === true || facts.detectionThroughout === true;
/** The answer is put forward as a decision, not as what would lead if a missing fact turned out well. */
const decided = (decision: Decision) => decision.stands && decision.chosen !== null;

/** What the sections on electric locks list, as it is ordered; what is tied to a system only where there is one. */
function partsOfSet(release: Release, facts: FactValues, ibc: number | null): readonly ItemId[] {
  const alarm: readonly ItemId[] = facts.fireAlarm === true ? ['fireAlarmRelease'] : [];
  const flow: readonly ItemId[] = protectedBuilding(facts) ? ['detectionRelease'] : [];
  switch (release) {
    case 'sensor':
      return [
        'exitSensor',
        'pushToExit',
        'signPushToExit',
        'powerLossRelease',
        // The list of 2018 does not name it.
        ...(ibc === 2018 ? [] : (['emergencyLighting'] as const)),
        'listedLock',
        ...alarm,
        ...flow,
      ];
    case 'doorSwitch':
      return ['doorSwitchHardware', 'powerLossRelease', 'listedLock'];
    case 'delayed':
      return [
        'delaySounder',
        'delayOverride',
        'detectionRelease',
        'powerLossRelease',
        'emergencyLighting',
        'listedLock',
        ...alarm,
      ];
    case 'controlled':
      return ['staffMeans', 'emergencyLighting', 'listedLock'];
    case 'clinical':
      return ['staffMeans'];
    case 'lobby':
      return [
        'fireAlarmRelease',
        'detectionRelease',
        'powerLossRelease',
        'twoWayCommunication',
        'emergencyLighting',
        'listedLock',
      ];
    case 'stairReentry':
      return ibc !== null ? ['stairReleaseTogether'] : [];
    default:
      return [];
  }
}
const delaySigns: readonly ItemId[] = [
  'signDelayed15',
  'signDelayed30',
  'signDelayedPull',
  'signDelayedPull30',
];

export const invariants: Readonly<Record<string, Invariant>> = {
  'a person on the egress side always has a lawful way out': ({ facts }, { chosen }) => {
    if (!chosen || noOneInside(facts)) return undefined;
    return ['none', 'alarmOnly', 'buttonOnly', 'credentialOut'].includes(chosen.candidate.release)
      ? `leads with ${chosen.candidate.id}`
      : undefined;
  },

  'a fire-rated leaf keeps a positive latch': ({ facts }, decision) => {
    if (!decided(decision) || !((facts.fireRatingMin ?? 0) > 0) || !decision.chosen) return undefined;
    const { device, failMode, id } = decision.chosen.candidate;
    if (device.family === 'strike') return failMode === 'secure' ? undefined : `fail-safe strike ${id}`;
    if (device.keepsLatch || device.family === 'exitDevice') return undefined;
    const items = partsOf(decision).map((part) => part.item as string);
    const keepsAnother = items.some((item) => ['passiveLatch', 'latchingHardware'].includes(item));
    return keepsAnother ? undefined : `${id} without separate latching hardware`;
  },

  'latch retraction on a rated door drops on alarm': ({ facts }, decision) => {
    if (!decided(decision) || !((facts.fireRatingMin ?? 0) > 0) || !decision.chosen) return undefined;
    if (!decision.chosen.candidate.deviceId.startsWith('latchRetraction')) return undefined;
    return partsOf(decision).some(
      (part) => part.item === 'fireAlarmRelatch' || (part.item as string) === 'doorDetector',
    )
      ? undefined
      : 'nothing lets the latch out when fire is detected';
  },

  'stair re-entry is a fail-safe lock or trim that stays latched': ({ facts, basis }, decision) => {
    if (!decided(decision) || basis.ibc === null || !decision.chosen) return undefined;
    if (facts.egressRole !== 'stairEntry' || facts.stairLockWanted !== 'stairSide') return undefined;
    const { device, failMode, release, id } = decision.chosen.candidate;
    const right =
      failMode === 'safe' &&
      device.keepsLatch &&
      release === 'stairReentry' &&
      ['lock', 'exitDevice'].includes(device.family);
    return right ? undefined : `stair side locked by ${id}`;
  },

  'delayed egress only where the code lets it be': ({ facts, basis }, decision) => {
    if (!decided(decision) || decision.chosen?.candidate.release !== 'delayed') return undefined;
    if (isH(facts)) return 'in Group H';
    if (!protectedBuilding(facts)) return 'without sprinklers or detection';
    if (facts.wishDelayedEgress !== true) return 'nobody asked for it';
    if (basis.ibc === null) return undefined;
    if (isA(facts) && facts.roomUse !== 'courtroom') return 'in Group A';
    if (isA(facts) && facts.sprinklered !== true) return 'courtroom without sprinklers';
    if (facts.occupancyGroup === 'E' && !(facts.roomUse === 'classroom' && (facts.occupantLoad ?? 999) < 50))
      return 'in Group E';
    return undefined;
  },

  'controlled egress only in I-1 and I-2 with a clinical need': ({ facts, basis }, decision) => {
    if (!decided(decision) || decision.chosen?.candidate.release !== 'controlled') return undefined;
    if (basis.ibc !== null && !['I-1.1', 'I-1.2', 'I-2'].includes(facts.occupancyGroup ?? ''))
      return `in ${facts.occupancyGroup}`;
    return facts.clinicalNeed === undefined || facts.clinicalNeed === 'none'
      ? 'without a clinical need'
      : undefined;
  },

  'clinical locks only in health care': ({ facts, basis }, decision) => {
    if (!decided(decision) || decision.chosen?.candidate.release !== 'clinical') return undefined;
    if (basis.ibc !== null && basis.ibc < 2021) return 'under IBC 2018';
    return ['I-1.2', 'I-2'].includes(facts.occupancyGroup ?? '') ? undefined : `in ${facts.occupancyGroup}`;
  },

  'no sensor or door-hardware release in Group H': ({ facts, basis }, decision) => {
    const release = decision.chosen?.candidate.release;
    if (!decided(decision) || basis.ibc === null || !isH(facts) || noOneInside(facts)) return undefined;
    return release === 'sensor' || release === 'doorSwitch' ? `released by ${release}` : undefined;
  },

  'IBC 2024: no sensor where panic hardware is required': ({ facts, basis }, decision) => {
    if (!decided(decision) || basis.ibc !== 2024 || decision.chosen?.candidate.release !== 'sensor')
      return undefined;
    const assembly = isA(facts) || facts.occupancyGroup === 'E';
    return assembly && (facts.occupantLoad ?? 0) >= 50 && !noOneInside(facts) && facts.latch !== 'pushPull'
      ? 'sensor in a space of 50 or more'
      : undefined;
  },

  'panic hardware where 50 or more gather': ({ facts, basis }, decision) => {
    if (!decided(decision) || basis.ibc === null || !decision.chosen || noOneInside(facts)) return undefined;
    const gathers = (isA(facts) || facts.occupancyGroup === 'E') && (facts.occupantLoad ?? 0) >= 50;
    if (!gathers) return undefined;
    const { device, release, id } = decision.chosen.candidate;
    const barOnLeaf =
      facts.panicPresent === true || facts.latch === 'rimExit' || facts.latch === 'verticalRods';
    if (device.exitDevice || barOnLeaf) return undefined;
    // A leaf that is only pushed and pulled latches nothing; a magnet there is a lock and needs the bar.
    if (device.family === 'none' && facts.latch === 'pushPull' && release === 'free') return undefined;
    const added = partsOf(decision).some((part) =>
      ['panicHardware', 'fireExitHardware', 'doorSwitchHardware'].includes(part.item),
    );
    return added ? undefined : `${id} without panic hardware`;
  },

  'detention is never settled here': ({ facts }, decision) =>
    facts.roomUse === 'detention' && decision.state === 'settled' ? 'settled' : undefined,

  'what is ruled out names a rule that cites its source': (_point, decision) => {
    const bare = decision.rejected.find(
      (one) => one.because.length === 0 || one.because.some((step) => step.rule.cites.length === 0),
    );
    return bare ? `${bare.candidate.id} is ruled out without a cited rule` : undefined;
  },

  'the choice is not among what is ruled out': (_point, decision) =>
    decision.rejected.some((one) => one.candidate === decision.chosen?.candidate)
      ? 'chosen and ruled out'
      : undefined,

  'a special arrangement is signed for': ({ facts }, decision) => {
    if (!decided(decision) || !decision.chosen || noOneInside(facts)) return undefined;
    const special = ['sensor', 'doorSwitch', 'delayed', 'controlled', 'clinical', 'lobby'].includes(
      decision.chosen.candidate.release,
    );
    const signed = decision.signOffs.some(
      (step) => step.clause.effect === 'signOff' && step.clause.grade === 'must',
    );
    return special && !signed ? `${decision.chosen.candidate.id} raises no sign-off` : undefined;
  },

  'a lock that holds people comes with every part its section asks for': ({ facts, basis }, decision) => {
    if (!decided(decision) || !decision.chosen || noOneInside(facts)) return undefined;
    const { id, release } = decision.chosen.candidate;
    const wanted = partsOfSet(release, facts, basis.ibc);
    if (wanted.length === 0) return undefined;
    const found = new Set(partsOf(decision).map((part) => part.item));
    const missing = wanted.filter((item) => !found.has(item));
    if (missing.length > 0) return `${id} without ${missing.join(', ')}`;
    const signs = delaySigns.filter((item) => found.has(item)).length;
    return release === 'delayed' && signs !== 1 ? `${id} with ${signs} delay signs` : undefined;
  },

  'the parts of the score add up': (_point, { chosen, runnerUp }) => {
    for (const choice of [chosen, runnerUp]) {
      if (!choice) continue;
      const sum = choice.score.parts.reduce((total, part) => total + part.tenths, 0);
      if (sum !== choice.score.tenths) return `${sum} instead of ${choice.score.tenths}`;
    }
    return undefined;
  },

  'nothing allowed scores better than a settled choice': (_point, decision) => {
    if (decision.state !== 'settled' || !decision.chosen || !decision.runnerUp) return undefined;
    return decision.runnerUp.score.tenths > decision.chosen.score.tenths
      ? 'the runner-up scores better'
      : undefined;
  },
};
