import { type ReactNode, useId } from 'react';
import { useDraft } from './useDraft.ts';

interface Props {
  readonly label: string;
  readonly value: string;
  /** Keeps the text; a returned sentence says why it was refused, and the text stays as typed. */
  readonly onKeep: (text: string) => string | undefined;
  readonly lines?: number;
  readonly help?: ReactNode;
  readonly hideLabel?: boolean;
  readonly placeholder?: string;
}

/** One text, kept when the field is left or Enter is pressed. */
export function TextField({ label, value, onKeep, lines = 1, help, hideLabel = false, placeholder }: Props) {
  const id = useId();
  const draft = useDraft(value);
  const keep = () => {
    if (draft.isChanged) draft.refuse(onKeep(draft.text));
  };
  const common = {
    id,
    className: 'input',
    value: draft.text,
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
        {draft.problem !== '' && (
          <p role="alert" className="field-error">
            {draft.problem}
          </p>
        )}
      </div>
    </div>
  );
}
