import { type FactKey, fieldInfo } from '../model/fields.ts';
import { doorAnswers } from './answers/door.ts';
import { egressAnswers } from './answers/egress.ts';
import { frameAnswers } from './answers/frame.ts';
import { healthAnswers } from './answers/health.ts';
import { latchAnswers } from './answers/latch.ts';
import { occupancyAnswers } from './answers/occupancy.ts';
import { pairAndFireAnswers } from './answers/pairAndFire.ts';
import { roomAnswers } from './answers/room.ts';
import type { AnswerSaid, AnswersTo, ChoiceKey } from './answers/said.ts';
import { siteAnswers } from './answers/site.ts';
import { wishesAnswers } from './answers/wishes.ts';
import type { Term } from './glossary/term.ts';

/** What each answer of each choice question means. A question without its answers does not compile. */
export const answerWords: AnswersTo<ChoiceKey> = {
  ...doorAnswers,
  ...frameAnswers,
  ...latchAnswers,
  ...pairAndFireAnswers,
  ...egressAnswers,
  ...roomAnswers,
  ...occupancyAnswers,
  ...healthAnswers,
  ...wishesAnswers,
  ...siteAnswers,
};

/** The answers to a question that need a word more than their label, in the order they are offered. */
export function answersExplained(key: FactKey): readonly Term[] {
  const words: Readonly<Record<string, Readonly<Record<string, AnswerSaid | null>>>> = answerWords;
  return Object.entries(fieldInfo(key).options ?? {}).flatMap(([value, label]) => {
    const said = words[key]?.[value];
    return said ? [{ term: label, ...said }] : [];
  });
}
