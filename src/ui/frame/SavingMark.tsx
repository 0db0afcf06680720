import { useEffect, useState } from 'react';
import { useApp, useApplication } from '../context.ts';

const words = {
  opening: 'Opening…',
  saved: 'Saved',
  draft: 'Not saved yet',
  waiting: 'Saving soon',
  saving: 'Saving…',
  failed: 'Not saved',
  readOnly: 'Read only',
} as const;

/** A state that passes within this time offers no button: it would blink with every edit. */
const passing = 1_500;

/** Says all the time whether the work is on disk; "Saved" only once all of it is, what is typed in a field too. */
export function SavingMark() {
  const saving = useApp((state) => state.saving);
  const isOpening = useApp(({ session }) => !session.ready || session.busy);
  const isShown = useApp(({ session }) => session.ready);
  const app = useApplication();
  const hasDrafts = useApp(({ session }) => session.drafts.length > 0);
  const stored = saving.kind === 'saved' && hasDrafts ? 'draft' : saving.kind;
  const kind = isOpening ? 'opening' : stored;
  const lasts = useLasting(kind);
  const says = !isOpening && (saving.kind === 'failed' || saving.kind === 'readOnly') ? saving.says : '';
  const offersCopy = isShown && kind !== 'saved' && (says !== '' || lasts);
  return (
    <div className="saving" role="status" aria-live="polite" data-saving={kind}>
      <span className="tag">{words[kind]}</span>
      {says !== '' && <p className="note">{says}</p>}
      {!isOpening && saving.kind === 'readOnly' && saving.canStoreAgain && (
        <button type="button" className="button button-small" onClick={() => void app.storeAgain()}>
          Store it again
        </button>
      )}
      {offersCopy && (
        <button type="button" className="button button-small" onClick={() => void app.downloadCopy()}>
          Save a copy
        </button>
      )}
    </div>
  );
}

/** True once the state has stayed for longer than a save usually takes. */
function useLasting(kind: string): boolean {
  const [lasting, setLasting] = useState('');
  useEffect(() => {
    const timer = setTimeout(() => setLasting(kind), passing);
    return () => {
      clearTimeout(timer);
      setLasting('');
    };
  }, [kind]);
  return lasting === kind;
}
