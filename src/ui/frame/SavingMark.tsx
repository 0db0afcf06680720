import { useApp, useApplication } from '../context.ts';

const words = {
  saved: 'Saved',
  waiting: 'Saving soon',
  saving: 'Saving…',
  failed: 'Not saved',
  readOnly: 'Read only',
} as const;

/** Says all the time whether the work is on disk; "Saved" only once it is. */
export function SavingMark() {
  const saving = useApp((state) => state.saving);
  const app = useApplication();
  return (
    <div className="saving" role="status" aria-live="polite" data-saving={saving.kind}>
      <span className="tag">{words[saving.kind]}</span>
      {(saving.kind === 'failed' || saving.kind === 'readOnly') && (
        <>
          <p className="note">{saving.says}</p>
          <button type="button" className="button button-small" onClick={() => app.downloadCopy()}>
            Save a copy
          </button>
        </>
      )}
    </div>
  );
}
