import { factKeys, fieldInfo, isFactKey } from '../../domain/model/fields.ts';
import { type AmendmentDraft, answersTo, factsByLabel } from '../../domain/project/amendments.ts';

type When = AmendmentDraft['when'];
const questions = factsByLabel(factKeys);

/** Answers that must all stand at an opening for the amendment to apply; none means every opening. */
export function AmendmentConditions(props: {
  when: When;
  problems: Readonly<Record<string, string>>;
  onChange: (when: When) => void;
}) {
  const { when, problems, onChange } = props;
  const set = (index: number, change: Partial<When[number]>) =>
    onChange(when.map((one, at) => (at === index ? { ...one, ...change } : one)));
  return (
    <fieldset className="field stack stack-tight">
      <legend>Where it applies</legend>
      {when.length === 0 && <p className="note">At every opening.</p>}
      {when.map((one, index) => {
        const problem = problems[`when-${index}`];
        const choices = isFactKey(one.fact) ? answersTo(one.fact) : undefined;
        const unit = isFactKey(one.fact) ? (fieldInfo(one.fact).unit ?? '') : '';
        const name = `Condition ${index + 1}`;
        return (
          // The order is the only identity a condition being typed has.
          // oxlint-disable-next-line react/no-array-index-key
          <div key={index} className="stack stack-tight">
            <div className="condition-row">
              <select
                className="input"
                aria-label={`${name}: question`}
                value={one.fact}
                onChange={(event) => set(index, { fact: event.target.value, text: '' })}
              >
                <option value="">Pick a question</option>
                {questions.map(({ key, label }) => (
                  <option key={key} value={key}>
                    {label}
                  </option>
                ))}
              </select>
              {choices ? (
                <select
                  className="input"
                  aria-label={`${name}: answer`}
                  value={one.text}
                  aria-invalid={problem !== undefined}
                  onChange={(event) => set(index, { text: event.target.value })}
                >
                  <option value="">Pick an answer</option>
                  {choices.map((choice) => (
                    <option key={choice.value} value={choice.value}>
                      {choice.label}
                    </option>
                  ))}
                </select>
              ) : (
                <span className="with-unit">
                  <input
                    className="input"
                    aria-label={`${name}: answer`}
                    value={one.text}
                    aria-invalid={problem !== undefined}
                    onChange={(event) => set(index, { text: event.target.value })}
                  />
                  <span className="dim">{unit}</span>
                </span>
              )}
              <button
                type="button"
                className="button button-quiet button-small"
                onClick={() => onChange(when.filter((_one, at) => at !== index))}
              >
                Remove<span className="visually-hidden"> condition {index + 1}</span>
              </button>
            </div>
            {problem !== undefined && (
              <p role="alert" className="field-error">
                {problem}
              </p>
            )}
          </div>
        );
      })}
      <div className="row">
        <button
          type="button"
          className="button button-small"
          onClick={() => onChange([...when, { fact: '', text: '' }])}
        >
          Add a condition
        </button>
      </div>
    </fieldset>
  );
}
