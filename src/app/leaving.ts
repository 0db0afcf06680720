/** The page may be hidden, frozen or closed at any moment, on a phone without a warning. */
export interface Leaving {
  readonly flush: () => Promise<void>;
  readonly unsaved: () => boolean;
  /** The page is gone for good (not kept for the back button). */
  readonly gone: () => void;
}

/** Flushes whenever the page might be left, and asks before unsaved work is thrown away. Returns the undoing. */
export function watchLeaving(leaving: Leaving, page: Window = window): () => void {
  const flush = () => {
    void leaving.flush();
  };
  const hidden = () => {
    if (page.document.visibilityState === 'hidden') flush();
  };
  const hide = (event: PageTransitionEvent) => {
    flush();
    if (!event.persisted) leaving.gone();
  };
  const ask = (event: BeforeUnloadEvent) => {
    if (!leaving.unsaved()) return;
    flush();
    event.preventDefault();
  };
  page.document.addEventListener('visibilitychange', hidden);
  page.addEventListener('pagehide', hide);
  page.addEventListener('beforeunload', ask);
  return () => {
    page.document.removeEventListener('visibilitychange', hidden);
    page.removeEventListener('pagehide', hide);
    page.removeEventListener('beforeunload', ask);
  };
}
