import { type FactKey, factKeys, fieldInfo } from '../../model/fields.ts';
import { tradeWordsFor } from '../../survey/tradeWords.ts';
import { answersExplained } from '../answers.ts';
import type { Term } from './term.ts';

/** One question of the survey: its label, the sentence it is asked by, and every answer it may have. */
export interface SurveyTerm {
  readonly key: FactKey;
  readonly label: string;
  readonly ask: string;
  readonly help: string;
  /** What can be answered and is plain by itself. */
  readonly answers: readonly string[];
  /** What others in the trade call one of the answers. */
  readonly alsoCalled: readonly string[];
  /** Answers with what they mean. */
  readonly explained: readonly Term[];
}

export const surveyTerms: readonly SurveyTerm[] = factKeys
  .map((key) => {
    const info = fieldInfo(key);
    const explained = answersExplained(key);
    const plain = answersOf(key).filter((answer) => !explained.some(({ term }) => term === answer));
    const alsoCalled = Object.keys(info.options ?? {}).map((value) => tradeWordsFor(key, value));
    return {
      key,
      label: info.label,
      ask: info.ask,
      help: info.help ?? '',
      answers: plain,
      explained,
      alsoCalled,
    };
  })
  .toSorted((a, b) => (a.label < b.label ? -1 : 1));

function answersOf(key: FactKey): readonly string[] {
  const info = fieldInfo(key);
  switch (info.kind) {
    case 'yesNo':
      return ['Yes', 'No'];
    case 'choice':
      return Object.values(info.options ?? {});
    case 'number':
      return [`${info.min ?? ''} to ${info.max ?? ''} ${info.unit ?? ''}`.trim()];
  }
}
