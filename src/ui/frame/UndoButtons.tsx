import { useEffect } from 'react';
import { isVerdict, lastUndoable } from '../../app/store.ts';
import { redoAndSay, undoAndSay } from '../../app/undoAndSay.ts';
import { verdictsAreNotUndone } from '../../domain/review/words.ts';
import { useApp, useStore } from '../context.ts';

/** Undo and redo, with what they would take back or bring again; Ctrl+Z works everywhere but in a text being typed. */
export function UndoButtons() {
  const store = useStore();
  const last = useApp((state) => lastUndoable(state.document.past)?.command.label);
  const signed = useApp((state) => isVerdict(state.document.past.at(-1)));
  const undoes = last === undefined ? 'Nothing to undo' : `Undo: ${last} (Ctrl+Z)`;
  const next = useApp((state) => state.document.future.at(-1)?.command.label);
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      // A text being typed has its own undo.
      const target = event.target as HTMLElement | null;
      if (target?.matches('input[type="text"], input:not([type]), textarea')) return;
      const key = event.key.toLowerCase();
      if (key === 'z' && !event.shiftKey) undoAndSay(store);
      else if (key === 'y' || (key === 'z' && event.shiftKey)) redoAndSay(store);
      else return;
      event.preventDefault();
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  }, [store]);
  return (
    <>
      <button
        type="button"
        className="button button-small"
        disabled={last === undefined}
        title={signed ? `${undoes}. ${verdictsAreNotUndone}` : undoes}
        onClick={() => undoAndSay(store)}
      >
        Undo
      </button>
      <button
        type="button"
        className="button button-small"
        disabled={next === undefined}
        title={next === undefined ? 'Nothing to redo' : `Redo: ${next} (Ctrl+Shift+Z)`}
        onClick={() => redoAndSay(store)}
      >
        Redo
      </button>
    </>
  );
}
