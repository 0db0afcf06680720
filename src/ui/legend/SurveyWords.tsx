import type { SurveyTerm } from '../../domain/manual/glossary.ts';
import { TermList } from './TermList.tsx';

interface Props {
  readonly questions: readonly SurveyTerm[];
  /** What was searched stands open. */
  readonly searched: boolean;
}

/** Every label of the survey with the question it stands for, its possible answers, and what they mean. */
export function SurveyWords({ questions, searched }: Props) {
  return (
    <details key={String(searched)} open={searched}>
      <summary>
        {searched
          ? `Questions with this word (${questions.length})`
          : `All ${questions.length} questions with their answers`}
      </summary>
      <div className="survey-words">
        {questions.map((term) => (
          <section key={term.key} aria-label={term.label}>
            <h3>{term.label}</h3>
            <p>
              {term.ask} {term.help}
            </p>
            {term.explained.length > 0 && <TermList terms={term.explained} />}
            {term.answers.length > 0 && (
              <p className="note">
                {term.explained.length > 0 ? 'Also: ' : 'Answers: '}
                {term.answers.join(' · ')}
              </p>
            )}
          </section>
        ))}
      </div>
    </details>
  );
}
