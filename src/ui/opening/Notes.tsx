import { useId } from 'react';
import type { Opening } from '../../domain/model/project.ts';
import { draftWords } from '../../domain/text/draftWords.ts';
import { notesId, rowsOf } from './notes.ts';
import { useApp, useStore } from '../context.ts';

/** Kept with every key: a tab that is killed in the middle of a sentence keeps its beginning. */
export function Notes({ opening }: { opening: Opening }) {
  const store = useStore();
  const visit = useId();
  const isReadOnly = useApp(({ saving }) => saving.kind === 'readOnly');
  return (
    <label className="field notes-field">
      <span className="lettering soft">Notes</span>
      <textarea
        id={notesId}
        className="input notes"
        rows={rowsOf(opening.notes)}
        value={opening.notes}
        readOnly={isReadOnly}
        onChange={(event) =>
          store
            .getState()
            .dispatch(
              `${opening.mark}: notes`,
              [{ kind: 'setOpening', id: opening.id, field: 'notes', value: event.target.value }],
              `notes ${visit}`,
            )
        }
      />
      {isReadOnly && <span className="field-help">{draftWords.readOnly}</span>}
    </label>
  );
}
