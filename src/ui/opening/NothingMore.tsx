import type { RefObject } from 'react';
import type { FactKey } from '../../domain/model/fields.ts';
import { alsoNeededInWords, type SurveyEnd } from '../../domain/survey/surveyEnd.ts';

interface Props {
  readonly end: SurveyEnd;
  readonly headingRef?: RefObject<HTMLHeadingElement | null>;
  /** Asks one of them again. */
  readonly onAsk: (key: FactKey) => void;
}

/** The survey is at its end; what nobody could tell and still counts, and what an order needs, is asked from here. */
export function NothingMore({ end, headingRef, onAsk }: Props) {
  return (
    <div className="stack">
      <h2 ref={headingRef} tabIndex={-1} className="question-asked">
        {end.says}
      </h2>
      <ToAnswer facts={end.couldChange} onAsk={onAsk} />
      {end.alsoNeeded.length > 0 && (
        <>
          <h3>{alsoNeededInWords}</h3>
          <ToAnswer facts={end.alsoNeeded} onAsk={onAsk} />
        </>
      )}
    </div>
  );
}

function ToAnswer({ facts, onAsk }: { facts: SurveyEnd['couldChange']; onAsk: Props['onAsk'] }) {
  if (facts.length === 0) return null;
  return (
    <ul className="given">
      {facts.map(({ key, label }) => (
        <li key={key}>
          <p>{label}</p>
          <button type="button" className="button" aria-label={`Answer ${label}`} onClick={() => onAsk(key)}>
            Answer
          </button>
        </li>
      ))}
    </ul>
  );
}
