import { surveyTerms } from '../../domain/explain/glossary.ts';

/** Every label of the survey with the question it stands for and its possible answers. */
export function SurveyWords() {
  return (
    <details>
      <summary>All {surveyTerms.length} questions with their answers</summary>
      <dl className="glossary">
        {surveyTerms.map((term) => (
          <div key={term.key}>
            <dt>{term.label}</dt>
            <dd>
              {term.ask} {term.help}
              <span className="glossary-answers">{term.answers.join(' · ')}</span>
            </dd>
          </div>
        ))}
      </dl>
    </details>
  );
}
