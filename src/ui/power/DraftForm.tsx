import { useId, useState } from 'react';
import { Pick } from '../project/SpaceForm.tsx';
import { DraftNote } from '../parts/DraftNote.tsx';
import { type DraftPlace, focusFirst, useDraft } from '../parts/useDraft.ts';

/** One line of a form: a text, a longer text, or a choice. */
export interface DraftField<Key extends string> {
  readonly key: Key;
  readonly label: string;
  readonly unit?: string;
  readonly help?: string;
  readonly lines?: number;
  readonly options?: readonly (readonly [value: string, label: string])[];
}

interface Props<Key extends string> {
  readonly name: string;
  /** Where a form that is not kept yet is found again. */
  readonly at: DraftPlace;
  readonly fields: readonly DraftField<Key>[];
  readonly start: Readonly<Record<Key, string>>;
  readonly button: string;
  /** Keeps what was typed; what is refused comes back with its field. */
  readonly onKeep: (
    draft: Readonly<Record<Key, string>>,
  ) => { readonly field: string; readonly says: string } | undefined;
  readonly onCancel: () => void;
}

/** A form of plain fields; the sentence of a refusal stands at its field. */
export function DraftForm<Key extends string>({
  name,
  at,
  fields,
  start,
  button,
  onKeep,
  onCancel,
}: Props<Key>) {
  const id = useId();
  const kept = useDraft(at, start);
  const { value: draft, isReadOnly } = kept;
  const [problem, setProblem] = useState({ field: '', says: '' });
  const set = (key: Key, value: string) => kept.type({ ...draft, [key]: value });
  const placed = fields.some(({ key }) => key === problem.field);
  return (
    <form
      className="stack"
      aria-label={name}
      onSubmit={(event) => {
        event.preventDefault();
        const refused = onKeep(draft);
        setProblem(refused ?? { field: '', says: '' });
        if (!refused) kept.done();
      }}
    >
      <div className="project-fields">
        {fields.map(({ key, label, unit, help, lines, options }, index) => {
          const wrong = problem.field === key && problem.says !== '';
          const error = wrong && (
            <p role="alert" className="field-error">
              {problem.says}
            </p>
          );
          if (options)
            return (
              <div key={key}>
                <Pick
                  label={label}
                  value={draft[key]}
                  options={options}
                  onPick={(value) => set(key, value)}
                />
                {error}
              </div>
            );
          const common = {
            id: `${id}${key}`,
            className: 'input',
            value: draft[key],
            autoComplete: 'off',
            readOnly: isReadOnly,
            'aria-invalid': wrong,
            'aria-describedby': `${id}${key}about`,
            ...(index === 0 && { ref: focusFirst }),
          };
          return (
            <div key={key} className="field">
              <label htmlFor={`${id}${key}`}>{label}</label>
              {lines !== undefined ? (
                <textarea {...common} rows={lines} onChange={(event) => set(key, event.target.value)} />
              ) : (
                <span className="with-unit">
                  <input {...common} onChange={(event) => set(key, event.target.value)} />
                  {unit !== undefined && <span className="dim">{unit}</span>}
                </span>
              )}
              <div id={`${id}${key}about`}>
                {help !== undefined && <p className="field-help">{help}</p>}
                {error}
              </div>
            </div>
          );
        })}
      </div>
      {!placed && problem.says !== '' && (
        <p role="alert" className="field-error">
          {problem.says}
        </p>
      )}
      <DraftNote draft={kept} />
      <div className="row">
        <button type="submit" className="button button-main">
          {button}
        </button>
        <button
          type="button"
          className="button button-quiet"
          onClick={() => {
            kept.done();
            onCancel();
          }}
        >
          Cancel
        </button>
      </div>
    </form>
  );
}
