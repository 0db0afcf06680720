import { useEffect, useState } from 'react';
import { moveTo, namesOpening } from '../../app/addresses.ts';
import { tourFor } from '../../domain/manual/tour.ts';
import { useApp, useApplication } from '../context.ts';

/** Shown at the first visit only: what the demo building has to show, step by step, to be skipped at any time. */
export function Tour() {
  const { preferences } = useApplication();
  const ready = useApp((state) => state.session.ready);
  const openings = useApp((state) => state.document.project.openings);
  const [seen, setSeen] = useState(() => preferences.get('tourSeen') === 'yes');
  const [at, setAt] = useState(0);
  useEffect(() => {
    const again = () => {
      setAt(0);
      setSeen(false);
    };
    addEventListener('latchward-tour', again);
    return () => removeEventListener('latchward-tour', again);
  }, []);
  const steps = tourFor(openings);
  const step = steps[at];
  if (seen || !ready || !step) return null;
  const end = () => {
    preferences.set('tourSeen', 'yes');
    setSeen(true);
  };
  const next = steps[at + 1];
  const onNext = () => {
    if (!next) return end();
    setAt(at + 1);
    if (namesOpening(next.page)) moveTo(next.page, next.openingId);
    else moveTo(next.page);
  };
  return (
    <aside className="tour screen-only" aria-label="Tour">
      <p aria-live="polite">
        <span className="lettering">
          {at + 1} of {steps.length}
        </span>{' '}
        <strong>{step.title}</strong> {step.says}
      </p>
      <div className="row">
        <button type="button" className="button" onClick={onNext}>
          {next ? `Next: ${next.name}` : 'End the tour'}
        </button>
        {next && (
          <button type="button" className="button button-quiet" onClick={end}>
            Skip the tour
          </button>
        )}
      </div>
    </aside>
  );
}
