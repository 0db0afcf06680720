import { Suspense, useCallback, useEffect, useRef, useState } from 'react';
import { tourFor } from '../../domain/manual/tour.ts';
import { useApp, useApplication } from '../context.ts';
import { ErrorPanel } from '../parts/ErrorPanel.tsx';
import { lazyPage } from './lazyPage.ts';

export const helpSheet = lazyPage(() => import('./HelpSheet.tsx'));

/** Keys and words on one sheet, from every page: by the button or by "?". */
export function HelpButton() {
  const dialog = useRef<HTMLDialogElement>(null);
  const { preferences } = useApplication();
  const hasTour = useApp((state) => tourFor(state.document.project.openings).length > 0);
  const [asked, setAsked] = useState(false);
  const show = useCallback(() => {
    setAsked(true);
    dialog.current?.showModal();
  }, []);
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== '?' || event.ctrlKey || event.metaKey || event.altKey) return;
      if ((event.target as HTMLElement | null)?.closest('input, textarea, select')) return;
      event.preventDefault();
      show();
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  }, [show]);
  const tourAgain = () => {
    preferences.set('tourSeen', '');
    dispatchEvent(new Event('latchward-tour'));
    dialog.current?.close();
  };
  return (
    <>
      <button type="button" className="button button-small" aria-haspopup="dialog" onClick={show}>
        Help
      </button>
      <dialog ref={dialog} className="dialog dialog-wide help" aria-labelledby="help-title">
        <h2 id="help-title">Help</h2>
        {asked && (
          <ErrorPanel name="Help">
            <Suspense fallback={<p>Loading…</p>}>
              <helpSheet.Page />
            </Suspense>
          </ErrorPanel>
        )}
        <div className="dialog-actions">
          {hasTour && (
            <button type="button" className="button button-quiet" onClick={tourAgain}>
              Take the tour again
            </button>
          )}
          <button type="button" className="button" onClick={() => dialog.current?.close()}>
            Close
          </button>
        </div>
      </dialog>
    </>
  );
}
