import { type ReactNode, useState } from 'react';
import type { FactKey } from '../../domain/model/fields.ts';
import { fieldInfo } from '../../domain/model/fields.ts';
import { usualAmountsOf } from '../../domain/survey/amounts.ts';
import { alsoTyped } from '../../domain/survey/readFact.ts';

interface Props {
  readonly fact: FactKey;
  readonly labelledBy: string;
  readonly stored: string;
  readonly invalid: boolean;
  readonly onAnswer: (text: string) => void;
  readonly cannotTell: ReactNode;
}

/** A number asked as a whole question: nothing is kept before its button or Enter says so. */
export function AmountAnswer({ fact, labelledBy, stored, invalid, onAnswer, cannotTell }: Props) {
  const { unit } = fieldInfo(fact);
  const usual = usualAmountsOf(fact);
  const [draft, setDraft] = useState(stored === '?' ? '' : stored);
  return (
    <form
      className="stack stack-tight"
      onSubmit={(event) => {
        event.preventDefault();
        if (draft.trim() !== '') onAnswer(draft);
      }}
    >
      {usual.length > 0 && (
        <div className="answer answer-line">
          {usual.map((amount) => (
            <button
              key={amount}
              type="button"
              aria-pressed={stored === String(amount)}
              aria-label={`${amount} ${unit}`}
              onClick={() => onAnswer(String(amount))}
            >
              {amount}
            </button>
          ))}
        </div>
      )}
      <span className="with-unit">
        <input
          className="input"
          aria-labelledby={labelledBy}
          aria-invalid={invalid}
          inputMode={unit === 'in' ? 'text' : 'decimal'}
          enterKeyHint="done"
          autoComplete="off"
          value={draft}
          onChange={(event) => setDraft(event.target.value)}
        />
        <span className="dim">{unit}</span>
        <span className="note" aria-live="polite">
          {alsoTyped(fact, draft)}
        </span>
      </span>
      <div className="answer answer-line">
        <button type="submit">Answer</button>
        {cannotTell}
      </div>
    </form>
  );
}
