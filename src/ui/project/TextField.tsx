import { type ReactNode, useId } from 'react';
import { DraftNote } from '../parts/DraftNote.tsx';
import { type DraftPlace, useDraft } from '../parts/useDraft.ts';

interface Props {
  readonly label: string;
  /** Where a text that is not kept yet is found again. */
  readonly at: Omit<DraftPlace, 'label'>;
  readonly value: string;
  /** Keeps the text; a returned sentence says why it was refused, and the text stays as typed. */
  readonly onKeep: (text: string) => string | undefined;
  readonly lines?: number;
  readonly help?: ReactNode;
  readonly hideLabel?: boolean;
  readonly placeholder?: string;
}

/** One text, kept when the field is left or Enter is pressed. */
export function TextField(props: Props) {
  const { label, at, value, onKeep, lines = 1, help, hideLabel = false, placeholder } = props;
  const id = useId();
  const draft = useDraft({ ...at, label }, value);
  const keep = () => {
    if (draft.isChanged) draft.settle(onKeep(draft.value));
  };
  const common = {
    id,
    className: 'input',
    value: draft.value,
    readOnly: draft.isReadOnly,
    'aria-invalid': draft.problem !== '',
    'aria-describedby': `${id}about`,
    ...(placeholder === undefined ? {} : { placeholder }),
    onBlur: keep,
  };
  return (
    <div className="field">
      <label htmlFor={id} className={hideLabel ? 'visually-hidden' : 'field-label'}>
        {label}
      </label>
      {lines > 1 ? (
        <textarea {...common} rows={lines} onChange={(event) => draft.type(event.target.value)} />
      ) : (
        <input
          {...common}
          onChange={(event) => draft.type(event.target.value)}
          onKeyDown={(event) => {
            if (event.key === 'Enter') keep();
          }}
        />
      )}
      <div id={`${id}about`}>
        {help !== undefined && <p className="field-help">{help}</p>}
        <DraftNote draft={draft} onKeep={keep} />
      </div>
    </div>
  );
}
