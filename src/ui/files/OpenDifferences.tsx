import { useState } from 'react';
import { rememberLast } from '../../app/rememberLast.ts';
import { type OpenDifference, openDifferences } from '../../domain/merge/differences.ts';
import { useApp, useStore } from '../context.ts';
import { SideOfDifference } from './SideOfDifference.tsx';

const differences = rememberLast(openDifferences);

/** Values that two people entered in two copies; both are kept until somebody decides. */
export function OpenDifferences() {
  const open = differences(useApp((state) => state.document.project));
  const store = useStore();
  const [problem, setProblem] = useState('');
  if (open.length === 0) return <p className="note">Nothing waits for a decision.</p>;
  const settle = ({ edit, label }: OpenDifference['sides'][number]) => {
    const done = store.getState().dispatch(label, [edit]);
    setProblem(done.ok ? '' : done.says);
  };
  return (
    <div className="stack">
      <p className="note">
        Entered differently in two copies. Until you decide, an answer counts as not known here and a choice
        by hand or a review mark as not made.
      </p>
      {problem !== '' && (
        <p role="alert" className="field-error">
          {problem}
        </p>
      )}
      <ul className="file-list" aria-label="Differences to decide">
        {open.map((one) => (
          <li key={`${one.record} ${one.field}`}>
            <p>
              <strong>{one.where}</strong>
              <br />
              {one.what}
            </p>
            <div className="row">
              {one.sides.map((side) => (
                <button
                  key={`${side.says} ${side.at} ${side.by}`}
                  type="button"
                  className="button"
                  aria-label={`${one.where}, ${one.what}: use ${side.says}`}
                  onClick={() => settle(side)}
                >
                  <span>
                    <SideOfDifference side={side} />
                  </span>
                </button>
              ))}
            </div>
          </li>
        ))}
      </ul>
    </div>
  );
}
