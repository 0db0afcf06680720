import type { ReactNode } from 'react';
import type { FactKey } from '../../domain/model/fields.ts';
import { fieldInfo } from '../../domain/model/fields.ts';
import { amountAsStamped, stepOf, stepped, usualAmountsOf } from '../../domain/survey/amounts.ts';
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
        <div className="answer answer-line answer-amounts">
          {usual.map((amount) => (
            <button
              key={amount}
              type="button"
              aria-pressed={stored === String(amount)}
              aria-label={`${amountAsStamped(fact, amount)}, ${amount} ${unit}`}
              onClick={() => answer(String(amount))}
            >
              {amountAsStamped(fact, amount)}
            </button>
          ))}
        </div>
      )}
      <span className="with-unit">
        {stepOf(fact) !== undefined && (
          <>
            <Step label="Less" sign="−" onStep={() => draft.type(stepped(fact, draft.value, -1))} />
            <Step label="More" sign="+" onStep={() => draft.type(stepped(fact, draft.value, 1))} />
          </>
        )}
        <input
          className="input"
          aria-labelledby={labelledBy}
          aria-invalid={invalid}
          inputMode="decimal"
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

function Step({ label, sign, onStep }: { label: string; sign: string; onStep: () => void }) {
  return (
    <button type="button" className="button step-button" aria-label={label} onClick={onStep}>
      {sign}
    </button>
  );
}
