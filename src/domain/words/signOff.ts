import type { Decision } from '../decide/decision.ts';
import { type Because, type SignOff, signOffsOf } from '../decide/signOff.ts';
import type { UnmetNeed } from '../decide/unmetNeeds.ts';
import { slotOf } from '../logic/slots.ts';
import { type FactKey, fieldInfo } from '../model/fields.ts';
import type { Grade } from '../rules/rule.ts';
import { fillSentence, valueInSentence } from '../text/format.ts';
import { midSentence } from '../text/midSentence.ts';
import { candidateInWords, releaseInWords } from './arrangement.ts';
import { forbiddingRules } from './byHand.ts';

export const gradeWords: Record<Grade, string> = {
  must: 'Must be signed before issue',
  should: 'Should be looked at',
  note: 'Note',
};

export interface SignOffReason extends Omit<SignOff, 'because'> {
  readonly sentence: string;
  /** The recorded need that is not met: one signature, whichever rule stands against it. */
  readonly need?: FactKey;
}

/** Everything a reviewer must or should put a name to, in sentences, the gravest first. */
export function signOffReasons(decision: Decision): readonly SignOffReason[] {
  return signOffsOf(decision).map(({ because, ...asked }) => ({
    ...asked,
    sentence: sentenceOf(because, decision),
    ...(because.kind === 'unmet' && { need: because.unmet.fact }),
  }));
}

function sentenceOf(because: Because, decision: Decision): string {
  switch (because.kind) {
    case 'rule':
      return fillSentence(because.step.clause.says, decision.slots);
    case 'severe':
      return because.finding.says;
    case 'passedOver': {
      const { candidate, severe } = because.passedOver;
      const says = severe.map((one) => one.says).join(' ');
      return `${candidateInWords(candidate)} (${midSentence(releaseInWords(candidate))}) scores higher and was passed over: ${says}`;
    }
    case 'byHand': {
      const words = candidateInWords(because.chosen);
      return because.refused
        ? `Refused by rule, chosen by a person: ${midSentence(words)}. Forbidden by ${forbiddingRules(decision)}; only the authority’s written approval lifts that.`
        : `${words} was chosen by hand in place of the recommendation.`;
    }
    case 'assumed': {
      const { fact } = because;
      return `${fieldInfo(fact).label} is assumed (${valueInSentence(fact, decision.slots[slotOf(fact)])}; ${decision.assumed.get(fact)}), not surveyed.`;
    }
    case 'unmet':
      return needInWords(because.unmet);
    case 'secondHand':
      return `${because.ruleIds.join(', ')} rules out: ${midSentence(candidateInWords(because.ruledOut))}. The printed text was not read for this, so a reviewer confirms it.`;
  }
}

function needInWords(unmet: UnmetNeed): string {
  const name = fieldInfo(unmet.fact).label;
  switch (unmet.why) {
    case 'onlyByHand':
      return `${name}: recorded as needed, and this lock is thrown only by hand; a lock that takes the command is allowed here and ranks below it.`;
    case 'ranksBelow':
      return `${name}: recorded as needed, and not met by what leads; an arrangement that meets it is allowed here and ranks below it.`;
    case 'inDoubt':
      return `${name}: recorded as needed and not met here, ruled out or in doubt by ${unmet.ruleIds.join(', ')}.`;
    case 'ruledOut':
      return `${name}: recorded as needed and not met here, ruled out by ${unmet.ruleIds.join(', ')}.`;
  }
}
