import { useEffect, useRef } from 'react';
import { gridKeyLines } from '../../domain/grid/keys.ts';
import {
  factHelp,
  type HelpLine,
  keysEverywhere,
  keysOnOpening,
  stateHelp,
} from '../../domain/survey/help.ts';
import { useApplication } from '../context.ts';
import { DecisionStateMark } from '../parts/DecisionStateMark.tsx';

/** Keys and words on one sheet, from every page: by the button or by "?". */
export function HelpButton() {
  const dialog = useRef<HTMLDialogElement>(null);
  const { preferences } = useApplication();
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== '?' || event.ctrlKey || event.metaKey || event.altKey) return;
      if ((event.target as HTMLElement | null)?.closest('input, textarea, select')) return;
      event.preventDefault();
      dialog.current?.showModal();
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  }, []);
  const tourAgain = () => {
    preferences.set('tourSeen', '');
    dispatchEvent(new Event('latchward-tour'));
    dialog.current?.close();
  };
  return (
    <>
      <button
        type="button"
        className="button button-small"
        aria-haspopup="dialog"
        onClick={() => dialog.current?.showModal()}
      >
        Help
      </button>
      <dialog ref={dialog} className="dialog dialog-wide help" aria-labelledby="help-title">
        <h2 id="help-title">Help</h2>
        <h3>What a decision can be</h3>
        <dl className="help-lines">
          {stateHelp.map((line) => (
            <div key={line.state}>
              <dt>
                <DecisionStateMark state={line.state} />
              </dt>
              <dd>{line.says}</dd>
            </div>
          ))}
        </dl>
        <h3>Words</h3>
        <Lines lines={factHelp} />
        <h3>Keys on the schedule</h3>
        <Lines lines={gridKeyLines} keys />
        <h3>Keys at an opening</h3>
        <Lines lines={keysOnOpening} keys />
        <h3>Keys everywhere</h3>
        <Lines lines={keysEverywhere} keys />
        <div className="dialog-actions">
          <button type="button" className="button button-quiet" onClick={tourAgain}>
            Take the tour again
          </button>
          <button type="button" className="button" onClick={() => dialog.current?.close()}>
            Close
          </button>
        </div>
      </dialog>
    </>
  );
}

function Lines({ lines, keys = false }: { lines: readonly HelpLine[]; keys?: boolean }) {
  return (
    <dl className="help-lines">
      {lines.map((line) => (
        <div key={line.name}>
          <dt>{keys ? <kbd>{line.name}</kbd> : line.name}</dt>
          <dd>{line.says}</dd>
        </div>
      ))}
    </dl>
  );
}
