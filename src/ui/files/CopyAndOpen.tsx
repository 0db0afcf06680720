import { useId, useState } from 'react';
import type { Meeting } from '../../app/meeting.ts';
import { useApp, useApplication } from '../context.ts';
import { MeetingChoice } from './MeetingChoice.tsx';

/** The project as one file: the copy that leaves this browser, and the way back in. */
export function CopyAndOpen() {
  const app = useApplication();
  const name = useApp((state) => state.document.project.name);
  // Asked anew after each save and each copy.
  useApp((state) => `${state.saving.kind} ${state.session.oneCopy}`);
  const [copies, setCopies] = useState(0);
  const kept = app.whereKept();
  const id = useId();
  const [problem, setProblem] = useState('');
  const [done, setDone] = useState('');
  const [meets, setMeets] = useState<Meeting>();
  const open = async (file: File | undefined) => {
    if (!file) return;
    setDone('');
    setProblem('');
    const opened = await app.openFile(file);
    if (!opened.ok) setProblem(opened.says);
    else if (opened.meets) setMeets(opened.meets);
    else setDone(`${file.name} was opened. It is kept in this browser from now on.`);
  };
  if (meets) {
    return (
      <MeetingChoice
        meeting={meets}
        onDone={(says) => {
          setMeets(undefined);
          setDone(says);
        }}
      />
    );
  }
  return (
    <div className="columns columns-even">
      <div className="stack stack-tight">
        <h3>Save a copy</h3>
        <p className="note">The whole project as one file, to keep, to send, or to open on another device.</p>
        {kept.map((says) => (
          <p key={says} className="note">
            {says}
          </p>
        ))}
        <div className="row">
          <button
            type="button"
            className="button"
            onClick={() => {
              app.downloadCopy();
              setCopies(copies + 1);
            }}
          >
            Save a copy<span className="visually-hidden"> of {name}</span>
          </button>
        </div>
      </div>
      <div className="stack stack-tight">
        <h3>Open a file</h3>
        <div className="field">
          <label htmlFor={id}>Project file</label>
          <input
            id={id}
            type="file"
            className="input file-input"
            accept=".json,application/json"
            aria-invalid={problem !== ''}
            aria-describedby={`${id}about`}
            onChange={(event) => {
              void open(event.target.files?.[0]);
              // The same file may be chosen again after it was mended.
              event.target.value = '';
            }}
          />
          <div id={`${id}about`}>
            <p className="field-help">
              A file from an older version is updated; anything that cannot be read is set aside and listed.
              If the project is in this browser already, you see what differs before anything changes.
            </p>
            {problem !== '' && (
              <p role="alert" className="field-error">
                {problem}
              </p>
            )}
            <output>{done}</output>
          </div>
        </div>
      </div>
    </div>
  );
}
