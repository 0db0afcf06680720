import type { FactKey } from '../../domain/model/fields.ts';
import { alsoTyped } from '../../domain/survey/readFact.ts';
import { DraftNote } from '../parts/DraftNote.tsx';
import { type DraftPlace, useDraft } from '../parts/useDraft.ts';

interface Props {
  readonly fact: FactKey;
  readonly at: DraftPlace;
  readonly id: string;
  readonly described: string;
  readonly label: string;
  readonly unit: string;
  readonly stored: string;
  readonly invalid: boolean;
  /** Stores the answer; a returned sentence says why it was refused. */
  readonly onText: (text: string) => string | undefined;
}

/** Text while it is typed; it becomes a number when the field is left or Enter is pressed, never before. */
export function AmountInput(props: Props) {
  const shown = props.stored === '?' ? '' : props.stored;
  const draft = useDraft(props.at, shown);
  const keep = () => {
    // What is wrong with it stands under the whole field.
    if (props.onText(draft.value) === undefined) draft.done();
  };
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
          value={draft.value}
          readOnly={draft.isReadOnly}
          onChange={(event) => draft.type(event.target.value)}
          onBlur={() => draft.isChanged && keep()}
          onKeyDown={(event) => {
            if (event.key === 'Enter') keep();
          }}
        />
        <span className="dim">{props.unit}</span>
        <span className="note also">{alsoTyped(props.fact, draft.value)}</span>
      </span>
      <DraftNote draft={draft} onKeep={keep} />
    </>
  );
}
