import { draftWords } from '../../domain/text/draftWords.ts';
import type { FieldDraft } from './useDraft.ts';

interface Props {
  readonly draft: Omit<FieldDraft<never>, 'value' | 'type'>;
  /** Makes an edit of what was found again; a form has its own button for that. */
  readonly onKeep?: () => void;
}

/** Under a field: what was found again there, why it was refused, and that it cannot be edited. */
export function DraftNote({ draft, onKeep }: Props) {
  return (
    <>
      {draft.isReadOnly && <p className="field-help">{draftWords.readOnly}</p>}
      {draft.isOffered && !draft.isReadOnly && (
        <p className="field-standing row" role="status">
          <span>{draftWords.offered}</span>
          {onKeep && (
            <button type="button" className="button button-small" onClick={onKeep}>
              {draftWords.keep}
            </button>
          )}
          <button type="button" className="button button-quiet button-small" onClick={draft.done}>
            {draftWords.discard}
          </button>
        </p>
      )}
      {draft.problem !== '' && (
        <p role="alert" className="field-error">
          {draft.problem}
        </p>
      )}
    </>
  );
}
