import type { FactKey } from '../../domain/model/fields.ts';
import type { Answered } from '../../domain/survey/answers.ts';
import { howManyAnswered, surveyWords } from '../../domain/survey/words.ts';

interface Props {
  readonly answers: readonly Answered[];
  readonly onChange: (key: FactKey) => void;
}

/** What was answered at this opening, the last answer first; each can be asked again. */
export function AnswersGiven({ answers, onChange }: Props) {
  const last = answers.slice(0, 2);
  const rest = answers.slice(2);
  return (
    <section className="section" aria-labelledby="answered">
      <h2 id="answered" className="lead">
        {answers.length === 0 ? surveyWords.nothingAnswered : howManyAnswered(answers.length)}
      </h2>
      <AnswerRows answers={last} onChange={onChange} />
      {rest.length > 0 && (
        <details>
          <summary>Earlier answers ({rest.length})</summary>
          <AnswerRows answers={rest} onChange={onChange} />
        </details>
      )}
    </section>
  );
}

function AnswerRows({ answers, onChange }: Props) {
  return (
    <ul className="given">
      {answers.map((one) => (
        <li key={one.key}>
          <p>
            <span className="soft">{one.label}</span>{' '}
            <strong className={one.standing === 'known' ? undefined : 'value-assumed'}>{one.value}</strong>
            {one.note && <span className="note"> {one.note}</span>}
          </p>
          <button
            type="button"
            className="button"
            aria-label={`Change ${one.label}`}
            onClick={() => onChange(one.key)}
          >
            Change
          </button>
        </li>
      ))}
    </ul>
  );
}
