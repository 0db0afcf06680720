import type { ReactNode } from 'react';
import type { FactKey } from '../../domain/model/fields.ts';
import { fieldInfo } from '../../domain/model/fields.ts';
import { usualAmountsOf } from '../../domain/survey/amounts.ts';
import { alsoTyped } from '../../domain/survey/readFact.ts';
import { DraftNote } from '../parts/DraftNote.tsx';
import { type DraftPlace, useDraft } from '../parts/useDraft.ts';

interface Props {
  readonly fact: FactKey;
  readonly at: DraftPlace;
  readonly labelledBy: string;
  readonly stored: string;
  readonly invalid: boolean;
  /** Stores the answer; a returned sentence says why it was refused. */
  readonly onAnswer: (text: string) => string | undefined;
  readonly cannotTell: ReactNode;
}

/** A number asked as a whole question: nothing is kept before its button or Enter says so. */
export function AmountAnswer({ fact, at, labelledBy, stored, invalid, onAnswer, cannotTell }: Props) {
  const { unit } = fieldInfo(fact);
  const usual = usualAmountsOf(fact);
  const draft = useDraft(at, stored === '?' ? '' : stored);
  const answer = (text: string) => {
    if (onAnswer(text) === undefined) draft.done();
  };
  return (
    <form
      className="stack stack-tight"
      onSubmit={(event) => {
        event.preventDefault();
        if (draft.value.trim() !== '') answer(draft.value);
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
              onClick={() => answer(String(amount))}
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
          value={draft.value}
          readOnly={draft.isReadOnly}
          onChange={(event) => draft.type(event.target.value)}
        />
        <span className="dim">{unit}</span>
        <span className="note" aria-live="polite">
          {alsoTyped(fact, draft.value)}
        </span>
      </span>
      <DraftNote draft={draft} />
      <div className="answer answer-line">
        <button type="submit">Answer</button>
        {cannotTell}
      </div>
    </form>
  );
}
