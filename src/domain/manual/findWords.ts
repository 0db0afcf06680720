import { glossary, type SurveyTerm, surveyTerms, type TermGroup } from './glossary.ts';

interface Found {
  readonly groups: readonly TermGroup[];
  readonly questions: readonly SurveyTerm[];
  readonly nothing: boolean;
}

/** The part of the glossary that has the typed text in it; all of it while nothing is typed. */
export function findWords(typed: string): Found {
  const wanted = typed.trim().toLowerCase();
  const has = (...texts: readonly string[]) => texts.some((text) => text.toLowerCase().includes(wanted));
  const groups = glossary
    .map((group) => ({
      ...group,
      terms: group.terms.filter(({ term, says, alsoCalled = '' }) => has(term, says, alsoCalled)),
    }))
    .filter((group) => group.terms.length > 0);
  const questions = surveyTerms.filter(({ label, ask, help, answers, alsoCalled, explained }) =>
    has(label, ask, help, ...answers, ...alsoCalled, ...explained.flatMap(({ term, says }) => [term, says])),
  );
  return { groups, questions, nothing: groups.length + questions.length === 0 };
}
