import type { FactKey, FactValue } from '../../model/fields.ts';
import type { Origin } from '../glossary/term.ts';

/** What one answer of a question means: one plain sentence, and where the word comes from. */
export interface AnswerSaid {
  readonly says: string;
  readonly origin: Origin;
}

/** Facts answered by choosing from a list; those of yes and no or of a number need no words for their answers. */
export type ChoiceKey = { [K in FactKey]: FactValue<K> extends string ? K : never }[FactKey];

/** For each choice question every one of its answers; the compiler names the one that is missing or misspelt. */
export type AnswersTo<K extends ChoiceKey> = {
  readonly [F in K]: Readonly<Record<FactValue<F>, AnswerSaid | null>>;
};

/** The label says it all. */
export const plain = null;

export const trade = (says: string): AnswerSaid => ({ says, origin: 'trade' });
export const standard = (says: string): AnswerSaid => ({ says, origin: 'standard' });
export const own = (says: string): AnswerSaid => ({ says, origin: 'own' });
