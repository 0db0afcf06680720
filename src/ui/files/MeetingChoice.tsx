import { useEffect, useId, useRef, useState } from 'react';
import type { Meeting, TakeHow } from '../../app/meeting.ts';
import {
  comparedInWords,
  type Difference,
  type OnlyOne,
  outcomeWords,
} from '../../domain/merge/differences.ts';
import { counted } from '../../domain/text/counted.ts';
import { useApplication } from '../context.ts';
import { SideOfDifference } from './SideOfDifference.tsx';

interface Props {
  readonly meeting: Meeting;
  readonly onDone: (says: string) => void;
}

const doneWords: Readonly<Record<TakeHow, string>> = {
  merge: 'The file was merged. Undo takes the merge back in one step.',
  copy: 'The file was opened as a separate project. The one that was here is unchanged.',
  replace: 'The file took the place of the project. What was here is kept as a backup.',
};

/** A file of a project that is here: what differs, and what to do. Nothing happens before a choice. */
export function MeetingChoice({ meeting, onDone }: Props) {
  const app = useApplication();
  const heading = useRef<HTMLHeadingElement>(null);
  const [problem, setProblem] = useState('');
  const [busy, setBusy] = useState(false);
  useEffect(() => heading.current?.focus(), []);
  const take = async (how: TakeHow) => {
    setBusy(true);
    setProblem('');
    const taken = await app.takeFile(meeting, how);
    setBusy(false);
    if (taken.ok) onDone(doneWords[how]);
    else setProblem(taken.says);
  };
  const { onlyThere, onlyHere, differing } = meeting.compared;
  return (
    <section className="stack import-preview" aria-label="The project is here already">
      <h3 ref={heading} tabIndex={-1}>
        “{meeting.name}” is in this browser already
      </h3>
      <p>{comparedInWords(meeting.compared)} Nothing has changed yet.</p>
      <div className="row">
        <button type="button" className="button" disabled={busy} onClick={() => void take('merge')}>
          Merge the file into the project
        </button>
        <button
          type="button"
          className="button button-quiet"
          disabled={busy}
          onClick={() => void take('copy')}
        >
          Open as a separate copy
        </button>
        <button
          type="button"
          className="button button-quiet"
          disabled={busy}
          onClick={() => void take('replace')}
        >
          Replace the project, keep a backup
        </button>
        <button type="button" className="button button-quiet" disabled={busy} onClick={() => onDone('')}>
          Leave the file closed
        </button>
      </div>
      {problem !== '' && (
        <p role="alert" className="field-error">
          {problem}
        </p>
      )}
      <OnlyList name="Only in the file" all={onlyThere} />
      <OnlyList name="Only here" all={onlyHere} />
      <DifferingTable all={differing} />
    </section>
  );
}

/** Beyond this many lines a list is counted instead of read. */
const longest = 200;

function OnlyList({ name, all }: { name: string; all: readonly OnlyOne[] }) {
  const id = useId();
  if (all.length === 0) return null;
  return (
    <div className="stack stack-tight">
      <h4 id={id}>
        {name} ({all.length})
      </h4>
      <ul aria-labelledby={id} className="reasons">
        {all.slice(0, longest).map(({ record, says }) => (
          <li key={record}>{says}</li>
        ))}
      </ul>
      <More count={all.length - longest} />
    </div>
  );
}

function DifferingTable({ all }: { all: readonly Difference[] }) {
  if (all.length === 0) return null;
  // What has to be decided stands first; the rest keeps its order.
  const inOrder = all.toSorted((a, b) => Number(b.outcome === 'asked') - Number(a.outcome === 'asked'));
  return (
    <div className="stack stack-tight">
      <h4>Different values ({all.length})</h4>
      <div className="schedule-scroll">
        <table className="schedule schedule-folds">
          <thead>
            <tr>
              <th scope="col">Where</th>
              <th scope="col">Here</th>
              <th scope="col">In the file</th>
              <th scope="col">After a merge</th>
            </tr>
          </thead>
          <tbody>
            {inOrder.slice(0, longest).map((one) => (
              <tr key={`${one.record} ${one.field}`}>
                <th scope="row" data-head="Where">
                  {one.where}
                  <br />
                  {one.what}
                </th>
                <td data-head="Here">
                  <SideOfDifference side={one.mine} />
                </td>
                <td data-head="In the file">
                  <SideOfDifference side={one.theirs} />
                </td>
                <td data-head="After a merge">{outcomeWords[one.outcome]}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <More count={all.length - longest} />
    </div>
  );
}

function More({ count }: { count: number }) {
  return count > 0 ? <p className="note">and {counted(count, 'more', 'more')}.</p> : null;
}
