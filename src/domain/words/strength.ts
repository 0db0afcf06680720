import type { Decision } from '../decide/decision.ts';
import { knownValues } from '../decide/factView.ts';
import { memberNames, strengthMembers } from '../fit/strength.ts';
import { midSentence } from '../text/midSentence.ts';

export interface StrengthWords {
  readonly sentence: string;
  readonly members: readonly { readonly name: string; readonly lbf: string; readonly says: string }[];
}

/** What the choice holds and by which member; null where nothing is chosen. */
export function strengthOf(decision: Decision): StrengthWords | null {
  if (!decision.chosen) return null;
  const found = strengthMembers(decision.chosen.candidate.deviceId, knownValues(decision.slots));
  const range = forceSpan(found.lbf, found.highestLbf, ' to ');
  return {
    sentence: found.willNotHold
      ? 'As surveyed the latch does not engage far enough to hold.'
      : `Holds about ${range}; the weakest member is: ${midSentence(memberNames[found.limitedBy])}. Common practice, no source.`,
    members: found.members.map((member) => ({
      name: member.name,
      lbf: forceSpan(member.lowestLbf, member.highestLbf, '–'),
      says: member.says,
    })),
  };
}

/** Whole pounds: these are default figures, and decimals would say otherwise. */
function forceSpan(lowest: number, highest: number, between: string): string {
  const [low, high] = [Math.round(lowest), Math.round(highest)];
  return low === high ? `${low} lbf` : `${low}${between}${high} lbf`;
}
