import type { RefObject } from 'react';
import type { FactKey } from '../../domain/model/fields.ts';
import type { SurveyEnd } from '../../domain/survey/surveyEnd.ts';

interface Props {
  readonly end: SurveyEnd;
  readonly headingRef?: RefObject<HTMLHeadingElement | null>;
  /** Asks one of them again. */
  readonly onAsk: (key: FactKey) => void;
}

/** The survey is at its end; what nobody could tell and still counts can be asked again from here. */
export function NothingMore({ end, headingRef, onAsk }: Props) {
  return (
    <div className="stack">
      <h2 ref={headingRef} tabIndex={-1} className="question-asked">
        {end.says}
      </h2>
      {end.couldChange.length > 0 && (
        <ul className="given">
          {end.couldChange.map(({ key, label }) => (
            <li key={key}>
              <p>{label}</p>
              <button
                type="button"
                className="button"
                aria-label={`Answer ${label}`}
                onClick={() => onAsk(key)}
              >
                Answer
              </button>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
