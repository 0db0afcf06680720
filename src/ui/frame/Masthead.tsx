import { linkTo } from '../../app/addresses.ts';
import { useEffect, useRef, useState } from 'react';
import { type PageId, pageWords } from '../../domain/manual/pages.ts';
import { useApp } from '../context.ts';
import { HelpButton } from './HelpButton.tsx';
import { LookChoice } from './LookChoice.tsx';
import './masthead.css';
import { SavingMark } from './SavingMark.tsx';
import { UndoButtons } from './UndoButtons.tsx';

/** An opening has no tab of its own: it belongs to the schedule. */
const links = (Object.keys(pageWords) as PageId[]).filter((page) => page !== 'opening');

/** Name, pages, tools, and whether the work is on disk. On a phone one line; the rest waits behind a button. */
export function Masthead() {
  const page = useApp((state) => state.session.page);
  const projectName = useApp((state) => state.document.project.name);
  /** The page at which the menu was opened: going elsewhere closes it. */
  const [openAt, setOpenAt] = useState<PageId | null>(null);
  const open = openAt === page;
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (!open) return;
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== 'Escape') return;
      setOpenAt(null);
      button.current?.focus();
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  }, [open]);
  const here = page === 'opening' ? 'schedule' : page;
  return (
    <header className="masthead" data-open={open}>
      <a className="masthead-name" href={linkTo('schedule')} aria-label={`Latchward, ${projectName}`}>
        <MastheadMark />
        <span className="masthead-word">Latchward</span>
      </a>
      <button
        ref={button}
        type="button"
        className="button masthead-menu"
        aria-expanded={open}
        aria-controls="masthead-rest"
        aria-label={`Menu, now at ${pageWords[here].name}`}
        onClick={() => setOpenAt(open ? null : page)}
      >
        {pageWords[here].name} <span aria-hidden="true">{open ? '▴' : '▾'}</span>
      </button>
      <SavingMark />
      <div id="masthead-rest" className="masthead-rest">
        <nav aria-label="Pages">
          <ul className="masthead-links">
            {links.map((link) => (
              <li key={link}>
                <a
                  href={linkTo(link)}
                  onClick={() => setOpenAt(null)}
                  {...(link === here && { 'aria-current': 'page' as const })}
                >
                  {pageWords[link].name}
                </a>
              </li>
            ))}
          </ul>
        </nav>
        <div className="masthead-end row">
          <UndoButtons />
          <LookChoice />
          <HelpButton />
        </div>
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
