import { useEffect } from 'react';
import type { Page } from '../../app/store.ts';
import { useApp, useStore } from '../context.ts';
import { LookChoice } from './LookChoice.tsx';
import { SavingMark } from './SavingMark.tsx';

const links: readonly { page: Page; name: string }[] = [
  { page: 'schedule', name: 'Schedule' },
  { page: 'walk', name: 'Walk' },
  { page: 'building', name: 'Building' },
  { page: 'review', name: 'Review' },
  { page: 'print', name: 'Print' },
  { page: 'project', name: 'Project' },
  { page: 'rules', name: 'Rules' },
  { page: 'files', name: 'Files' },
  { page: 'legend', name: 'Legend' },
];

export function Masthead() {
  const page = useApp((state) => state.session.page);
  const projectName = useApp((state) => state.document.project.name);
  return (
    <header className="masthead">
      <a className="masthead-name" href="#/schedule" aria-label={`Latchward, ${projectName}`}>
        <MastheadMark />
        Latchward
      </a>
      <nav aria-label="Pages">
        <ul className="masthead-links">
          {links.map((link) => (
            <li key={link.page}>
              <a
                href={`#/${link.page}`}
                {...((page === link.page || (page === 'opening' && link.page === 'schedule')) && {
                  'aria-current': 'page' as const,
                })}
              >
                {link.name}
              </a>
            </li>
          ))}
        </ul>
      </nav>
      <div className="masthead-end row">
        <UndoButtons />
        <LookChoice />
        <SavingMark />
      </div>
    </header>
  );
}

/** A leaf standing open in its frame, seen from above. */
function MastheadMark() {
  return (
    <svg
      className="symbol"
      viewBox="0 0 24 24"
      fill="none"
      stroke="currentColor"
      strokeWidth="2"
      aria-hidden="true"
    >
      <path d="M1 20H6M18 20H23" strokeWidth="4" />
      <path d="M6 20V8" strokeWidth="2.5" />
      <path d="M6 8A12 12 0 0 1 18 20" strokeWidth="1.25" />
    </svg>
  );
}

function UndoButtons() {
  const store = useStore();
  const last = useApp((state) => state.document.past.at(-1)?.command.label);
  const next = useApp((state) => state.document.future.at(-1)?.command.label);
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      // A text being typed has its own undo.
      const target = event.target as HTMLElement | null;
      if (target?.matches('input[type="text"], input:not([type]), textarea')) return;
      const key = event.key.toLowerCase();
      if (key === 'z' && !event.shiftKey) store.getState().undo();
      else if (key === 'y' || (key === 'z' && event.shiftKey)) store.getState().redo();
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
        title={last === undefined ? 'Nothing to undo' : `Undo: ${last} (Ctrl+Z)`}
        onClick={() => store.getState().undo()}
      >
        Undo
      </button>
      <button
        type="button"
        className="button button-small"
        disabled={next === undefined}
        title={next === undefined ? 'Nothing to redo' : `Redo: ${next} (Ctrl+Shift+Z)`}
        onClick={() => store.getState().redo()}
      >
        Redo
      </button>
    </>
  );
}
