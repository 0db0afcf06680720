import { type FactKey, factKeys, fieldInfo } from '../../model/fields.ts';

/** One question of the survey: its label, the sentence it is asked by, and every answer it may have. */
export interface SurveyTerm {
  readonly key: FactKey;
  readonly label: string;
  readonly ask: string;
  readonly help: string;
  readonly answers: readonly string[];
}

export const surveyTerms: readonly SurveyTerm[] = factKeys
  .map((key) => {
    const info = fieldInfo(key);
    return { key, label: info.label, ask: info.ask, help: info.help ?? '', answers: answersOf(key) };
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
