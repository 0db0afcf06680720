import { useState } from 'react';
import { tourSteps } from '../../domain/explain/tour.ts';
import { useApp, useApplication } from '../context.ts';

/** Shown at the first visit only: what the demo building has to show, step by step, to be skipped at any time. */
export function Tour() {
  const { preferences } = useApplication();
  const ready = useApp((state) => state.session.ready);
  const [seen, setSeen] = useState(() => preferences.get('tourSeen') === 'yes');
  const [at, setAt] = useState(0);
  const step = tourSteps[at];
  if (seen || !ready || !step) return null;
  const end = () => {
    preferences.set('tourSeen', 'yes');
    setSeen(true);
  };
  const last = at === tourSteps.length - 1;
  return (
    <aside className="tour" aria-label="Tour">
      <p>
        <span className="lettering">
          {at + 1} of {tourSteps.length}
        </span>{' '}
        <strong>{step.title}</strong> {step.says}
      </p>
      <div className="row">
        {step.address && (
          <a className="button button-small" href={step.address}>
            {step.go}
          </a>
        )}
        <button type="button" className="button button-small" onClick={() => (last ? end() : setAt(at + 1))}>
          {last ? 'Done' : 'Next'}
        </button>
        {!last && (
          <button type="button" className="button button-quiet button-small" onClick={end}>
            Skip the tour
          </button>
        )}
      </div>
    </aside>
  );
}
