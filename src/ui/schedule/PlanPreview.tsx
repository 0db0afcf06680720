import { useEffect, useRef, useState } from 'react';
import {
  changesIn,
  inOrderOfTrouble,
  planInWords,
  readsInWords,
  shortened,
  stepHead,
} from '../../domain/grid/plan.ts';
import { Scroller } from '../parts/Scroller.tsx';
import type { Waiting } from './useCellSteps.ts';

interface Props {
  readonly waiting: Waiting;
  readonly onApply: () => void;
  readonly onCancel: () => void;
}

const atATime = 100;

/** Cell by cell what a step would do, those that are refused first, before anything is changed. */
export function PlanPreview({ waiting, onApply, onCancel }: Props) {
  const { plan, step, empties, again } = waiting;
  const dialog = useRef<HTMLDialogElement>(null);
  const [shown, setShown] = useState(atATime);
  const main = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    dialog.current?.showModal();
    main.current?.focus();
  }, []);
  const cells = inOrderOfTrouble(plan);
  const changes = changesIn(plan);
  return (
    <dialog
      ref={dialog}
      className="dialog dialog-wide plan"
      aria-labelledby="plan-title"
      onCancel={(event) => {
        event.preventDefault();
        onCancel();
      }}
    >
      <h2 id="plan-title">{stepHead(step)}</h2>
      <div className="stack">
        <p role="status">{planInWords(plan)}</p>
        {plan.outside.map((says) => (
          <p key={says} className="plan-outside">
            {says}
          </p>
        ))}
        {empties !== null && (
          <label className="choice-line">
            <input
              type="checkbox"
              className="tick"
              checked={empties === 'clear'}
              onChange={(event) => again(event.target.checked ? 'clear' : 'leave')}
            />
            <span>Empty cells clear what stands there</span>
          </label>
        )}
        <Scroller className="schedule-scroll plan-cells" label="Cell by cell">
          <table className="schedule schedule-folds">
            <thead>
              <tr>
                <th scope="col">Opening</th>
                <th scope="col">Column</th>
                <th scope="col">Now</th>
                <th scope="col">Text</th>
                <th scope="col">What becomes of it</th>
              </tr>
            </thead>
            <tbody>
              {cells.slice(0, shown).map((cell) => (
                <tr key={`${cell.openingId} ${cell.column}`} data-plan={cell.is}>
                  <th scope="row" className="mark">
                    {cell.mark}
                  </th>
                  <td data-head="Column">{cell.head}</td>
                  <td data-head="Now">{readsInWords(cell.before)}</td>
                  <td data-head="Text">{shortened(cell.text)}</td>
                  <td data-head="What becomes of it">{cell.outcome}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </Scroller>
        {cells.length > shown && (
          <button type="button" className="button" onClick={() => setShown(shown + atATime)}>
            Show more cells ({cells.length - shown})
          </button>
        )}
      </div>
      <div className="dialog-actions">
        <button type="button" className="button button-quiet" onClick={onCancel}>
          Cancel
        </button>
        <button
          type="button"
          className="button button-main"
          ref={main}
          disabled={changes === 0}
          onClick={onApply}
        >
          Apply
        </button>
      </div>
    </dialog>
  );
}
