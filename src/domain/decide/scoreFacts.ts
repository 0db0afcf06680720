import { candidates } from '../devices/candidates.ts';
import { type Slots, slotOf, valueIn } from '../logic/slots.ts';
import { type CandidateSet, has } from './candidateSet.ts';
import type { ScoreFacts } from './score.ts';

type Wish = ScoreFacts['wishedRelease'];

const scoreSlots = {
  wishDelayedEgress: slotOf('wishDelayedEgress'),
  wishControlledEgress: slotOf('wishControlledEgress'),
  fireRated: slotOf('fireRated'),
};

/** The release that the owner asks for, while it hangs on an answer whether it is granted: so does the whole ranking. */
export function hangingWish(slots: Slots, rejected: CandidateSet, doubted: CandidateSet): Wish {
  const wished = wishedRelease(slots, rejected);
  const hangs = candidates.every(
    ({ release, index }) => release !== wished || has(rejected, index) || has(doubted, index),
  );
  return hangs ? wished : undefined;
}

/** A wish that the rules refuse ranks nothing; otherwise any lawful lock would be marked down for it. */
function wishedRelease(slots: Slots, rejected: CandidateSet): Wish {
  const wished =
    slots[scoreSlots.wishControlledEgress] === true
      ? 'controlled'
      : slots[scoreSlots.wishDelayedEgress] === true
        ? 'delayed'
        : undefined;
  if (wished === undefined) return undefined;
  const granted = candidates.some(({ release, index }) => release === wished && !has(rejected, index));
  return granted ? wished : undefined;
}

/** A latch that falls short is work whatever is chosen (F-13): the gap is closed, and its full reach ranks. */
const fullReachIn = 2;

/** Whether every electric arrangement that is left, of those that do what was asked for, unlocks when power is lost. */
function isFailSafeOnly(rejected: CandidateSet, wished: Wish): boolean {
  let found = false;
  for (const { index, failMode, release } of candidates) {
    if (failMode === 'none' || has(rejected, index) || (wished !== undefined && release !== wished)) continue;
    if (failMode !== 'safe') return false;
    found = true;
  }
  return found;
}

/** What the ranking reads of an opening. */
export function scoreFacts(slots: Slots, rejected: CandidateSet): ScoreFacts {
  const wished = wishedRelease(slots, rejected);
  return {
    securityNeed: valueIn(slots, 'securityNeed'),
    traffic: valueIn(slots, 'traffic'),
    appearance: valueIn(slots, 'appearance'),
    latch: valueIn(slots, 'latch'),
    leafMaterial: valueIn(slots, 'leafMaterial'),
    frameMaterial: valueIn(slots, 'frameMaterial'),
    frameGrouted: valueIn(slots, 'frameGrouted'),
    workStatus: valueIn(slots, 'workStatus'),
    latchProjectionIn: fullReachIn,
    wishedRelease: wished,
    failSafeOnly: isFailSafeOnly(rejected, wished),
    fireRated: slots[scoreSlots.fireRated] === true,
  };
}
