import { useEffect, useId, useState } from 'react';
import { fileAccess } from '../../app/session/ahead.ts';
import { spaceUse } from '../../app/spaceUse.ts';
import { useApp, useApplication } from '../context.ts';

/** The copy that leaves this browser, open or with a passphrase. */
export function SaveCopy() {
  const app = useApplication();
  const name = useApp((state) => state.document.project.name);
  // Asked anew after each save and each copy.
  useApp((state) => `${state.saving.kind} ${state.session.oneCopy}`);
  const [copies, setCopies] = useState(0);
  const [space, setSpace] = useState('');
  const [sends, setSends] = useState(false);
  const id = useId();
  useEffect(() => {
    let left = false;
    void spaceUse().then((says) => {
      if (!left) setSpace(says);
    });
    void fileAccess().then(({ canSend }) => {
      if (!left) setSends(canSend());
    });
    return () => {
      left = true;
    };
  }, []);
  const [passphrase, setPassphrase] = useState('');
  const [busy, setBusy] = useState(false);
  const [problem, setProblem] = useState('');
  const save = async () => {
    setProblem('');
    if (passphrase === '') await app.downloadCopy();
    else {
      setBusy(true);
      const saved = await app.downloadLocked(passphrase);
      setBusy(false);
      if (!saved.ok) setProblem(saved.says);
    }
    setCopies(copies + 1);
  };
  const send = async () => {
    setProblem('');
    const sent = await app.sendCopy();
    if (!sent.ok) setProblem(sent.says);
    setCopies(copies + 1);
  };
  return (
    <div className="stack stack-tight">
      <h3>Save a copy</h3>
      <p className="note">The whole project as one file, to keep, to send, or to open on another device.</p>
      {[...app.whereKept(), space].filter(Boolean).map((says) => (
        <p key={says} className="note">
          {says}
        </p>
      ))}
      <div className="row">
        <button type="button" className="button" disabled={busy} onClick={() => void save()}>
          Save a copy<span className="visually-hidden"> of {name}</span>
        </button>
        {sends && (
          <button type="button" className="button" disabled={busy} onClick={() => void send()}>
            Send a copy<span className="visually-hidden"> of {name}</span>
          </button>
        )}
      </div>
      <details>
        <summary>With a passphrase</summary>
        <div className="field">
          <label htmlFor={id}>Passphrase for the copy</label>
          <input
            id={id}
            type="text"
            className="input"
            autoComplete="off"
            value={passphrase}
            aria-describedby={`${id}about`}
            onChange={(event) => setPassphrase(event.target.value)}
          />
          <p id={`${id}about`} className="field-help">
            Four or more random words. Nobody can open the file without it, and it cannot be recovered.
          </p>
        </div>
      </details>
      {problem !== '' && (
        <p role="alert" className="field-error">
          {problem}
        </p>
      )}
    </div>
  );
}
