import type { Decision } from '../decide/decision.ts';
import { valueIn } from '../logic/slots.ts';
import { releaseInWords } from '../words/arrangement.ts';
import { stateWords } from '../words/states.ts';
import { type FactKey, fieldInfo } from '../model/fields.ts';
import { stripKeys } from '../review/strip.ts';
import { valueInWords } from '../text/format.ts';

export interface LeanedOn {
  readonly label: string;
  readonly value: string;
}

/** What the decision leans on, with how people leave. Opening sheet and register print this one list. */
export function leanedOn(decision: Decision): readonly LeanedOn[] {
  const candidate = decision.chosen?.candidate ?? decision.overridden;
  return [
    ...stripKeys.map((key) => ({ label: fieldInfo(key).label, value: valueOf(key, decision) })),
    { label: 'Egress', value: candidate ? releaseInWords(candidate) : stateWords[decision.state].word },
  ];
}

/** An assumption shows as one: a signature under it stands on no survey. */
function valueOf(key: FactKey, { slots, assumed }: Decision): string {
  const said = valueInWords(key, valueIn(slots, key));
  return assumed.has(key) ? `${said} (assumed)` : said;
}
