import { useState } from 'react';
import { type FactKey, fieldInfo } from '../../domain/model/fields.ts';
import type { Opening } from '../../domain/model/project.ts';
import { useStore } from '../context.ts';
import { readFact } from '../../domain/survey/readFact.ts';
import { choicesOf, shownValue } from '../opening/answers.ts';
import type { Column } from './columns.ts';

interface Props {
  readonly column: Column;
  readonly opening: Opening;
  readonly onDone: () => void;
}

/** One cell being edited: Enter keeps, Escape leaves it as it was, a wrong value stays with its sentence. */
export function CellEditor({ column, opening, onDone }: Props) {
  const store = useStore();
  const fact = column.fact;
  const [draft, setDraft] = useState(fact ? shownValue(opening.facts[fact]) : opening.mark);
  const [problem, setProblem] = useState('');

  const keep = (text: string) => {
    const result = fact
      ? setFact(fact, text)
      : store
          .getState()
          .dispatch('Mark', [{ kind: 'setOpening', id: opening.id, field: 'mark', value: text.trim() }]);
    if (result.ok) onDone();
    else setProblem(result.says);
  };
  const setFact = (key: FactKey, text: string) => {
    const answer = readFact(key, text);
    if (!answer.ok) return answer;
    return store
      .getState()
      .dispatch(fieldInfo(key).label, [{ kind: 'setFact', id: opening.id, fact: key, value: answer.fact }]);
  };

  const choices = fact ? choicesOf(fact) : undefined;
  const label = `${column.head}, ${opening.mark}`;
  const keys = (event: { key: string; preventDefault: () => void; stopPropagation: () => void }) => {
    if (event.key === 'Escape') onDone();
    else if (event.key === 'Enter') keep(draft);
    else if (event.key !== 'Tab') {
      event.stopPropagation();
      return;
    }
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <span className="cell-editor">
      {choices ? (
        <select
          className="input"
          aria-label={label}
          autoFocus
          value={draft}
          onChange={(event) => {
            setDraft(event.target.value);
            keep(event.target.value);
          }}
          onKeyDown={keys}
          onBlur={onDone}
        >
          <option value="">Not surveyed</option>
          {choices.map((choice) => (
            <option key={choice.value} value={choice.value}>
              {choice.label}
            </option>
          ))}
        </select>
      ) : (
        <input
          className="input"
          aria-label={label}
          aria-invalid={problem !== ''}
          autoFocus
          value={draft}
          onChange={(event) => setDraft(event.target.value)}
          onKeyDown={keys}
          onBlur={() => keep(draft)}
        />
      )}
      {problem !== '' && (
        <span role="alert" className="field-error">
          {problem}
        </span>
      )}
    </span>
  );
}
