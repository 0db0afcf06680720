import { useState } from 'react';
import type { FactKey } from '../../domain/model/fields.ts';
import { alsoTyped } from '../../domain/survey/readFact.ts';

interface Props {
  readonly fact: FactKey;
  readonly id: string;
  readonly described: string;
  readonly label: string;
  readonly unit: string;
  readonly stored: string;
  readonly invalid: boolean;
  readonly onText: (text: string) => void;
}

/** Text while it is typed; it becomes a number when the field is left or Enter is pressed, never before. */
export function AmountInput(props: Props) {
  const shown = props.stored === '?' ? '' : props.stored;
  const [draft, setDraft] = useState(shown);
  return (
    <>
      <label htmlFor={props.id} className="field-label">
        {props.label}
      </label>
      <span className="with-unit">
        <input
          id={props.id}
          className="input"
          inputMode={props.unit === 'in' ? 'text' : 'decimal'}
          autoComplete="off"
          aria-describedby={props.described}
          aria-invalid={props.invalid}
          placeholder={props.stored === '?' ? 'Not known' : 'Not surveyed'}
          value={draft}
          onChange={(event) => setDraft(event.target.value)}
          onBlur={() => draft !== shown && props.onText(draft)}
          onKeyDown={(event) => {
            if (event.key === 'Enter') props.onText(draft);
          }}
        />
        <span className="dim">{props.unit}</span>
        <span className="note also">{alsoTyped(props.fact, draft)}</span>
      </span>
    </>
  );
}
