import { useId, useState } from 'react';
import type { Meeting } from '../../app/meeting.ts';
import { useApplication } from '../context.ts';

interface Props {
  readonly done: string;
  readonly onDone: (says: string) => void;
  readonly onMeets: (meeting: Meeting) => void;
}

/** The way back in: a project file, with its passphrase where it has one. */
export function OpenFile({ done, onDone, onMeets }: Props) {
  const app = useApplication();
  const id = useId();
  const [problem, setProblem] = useState('');
  const [locked, setLocked] = useState<File>();
  const [passphrase, setPassphrase] = useState('');
  const open = async (file: File | undefined, words?: string) => {
    if (!file) return;
    onDone('');
    setProblem('');
    const opened = await app.openFile(file, words);
    setLocked(opened.ok && opened.locked !== undefined ? file : undefined);
    if (!opened.ok) setProblem(opened.says);
    else if (opened.locked !== undefined) setProblem(words === undefined ? '' : opened.locked);
    else {
      setPassphrase('');
      if (opened.meets) onMeets(opened.meets);
      else onDone(`${file.name} was opened. It is kept in this browser from now on.`);
    }
  };
  return (
    <div className="stack stack-tight">
      <h3>Open a file</h3>
      <div className="field">
        <label htmlFor={id}>Project file</label>
        <input
          id={id}
          type="file"
          className="input file-input"
          accept=".zip,.json,.age,application/zip,application/json"
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
            A file from an older version is updated; anything that cannot be read is set aside and listed. If
            the project is in this browser already, you see what differs before anything changes.
          </p>
          {problem !== '' && (
            <p role="alert" className="field-error">
              {problem}
            </p>
          )}
          <output>{done}</output>
        </div>
      </div>
      {locked && (
        <form
          className="field"
          onSubmit={(event) => {
            event.preventDefault();
            void open(locked, passphrase);
          }}
        >
          <label htmlFor={`${id}words`}>Passphrase of {locked.name}</label>
          <input
            id={`${id}words`}
            type="text"
            className="input"
            autoComplete="off"
            value={passphrase}
            onChange={(event) => setPassphrase(event.target.value)}
          />
          <button type="submit" className="button">
            Open with this passphrase
          </button>
        </form>
      )}
    </div>
  );
}
