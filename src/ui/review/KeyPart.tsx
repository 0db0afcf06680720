import { type SubmitEvent, useState } from 'react';
import { useSigner } from '../../app/useSigner.ts';
import { useApplication } from '../context.ts';
import { downloadText } from '../files/download.ts';

/** The reviewer's key of this browser: made, unlocked, exported, brought in. */
export function KeyPart() {
  const { signer } = useApplication();
  const { file, signer: unlocked } = useSigner(signer);
  const [passphrase, setPassphrase] = useState('');
  const [told, setTold] = useState('');
  const submit = async (event: SubmitEvent) => {
    event.preventDefault();
    const done = await (file ? signer.unlock(passphrase) : signer.make(passphrase));
    setPassphrase('');
    setTold(done.ok ? 'The key signs from here on, until this page is left.' : done.says);
  };
  const bringIn = async (picked: File | undefined) => {
    if (!picked) return;
    const done = signer.bringIn(await picked.text());
    setTold(done.ok ? 'The key is in this browser. Unlock it to sign.' : done.says);
  };
  return (
    <section aria-label="Reviewer’s key" className="section stack stack-tight">
      <h3>Reviewer’s key</h3>
      {file && (
        <p>
          {file.algorithm}, print <span className="code">{file.print.match(/.{1,8}/g)?.join(' ')}</span>
        </p>
      )}
      {unlocked ? (
        <button type="button" className="button self-start" onClick={() => signer.lock()}>
          Lock the key
        </button>
      ) : (
        <form className="stack stack-tight" onSubmit={(event) => void submit(event)}>
          <label className="field">
            <span className="field-label">Passphrase</span>
            <input
              className="input"
              type="password"
              autoComplete="off"
              value={passphrase}
              onChange={(event) => setPassphrase(event.target.value)}
            />
          </label>
          <button type="submit" className="button button-main self-start">
            {file ? 'Unlock the key' : 'Make a key'}
          </button>
        </form>
      )}
      <p role="status" className="note">
        {told}
      </p>
      <div className="row">
        {file && (
          <button
            type="button"
            className="button button-small"
            onClick={() => downloadText('reviewer-key.json', signer.exported(), 'application/json')}
          >
            Export the key, under its passphrase
          </button>
        )}
        <label className="button button-small">
          Bring a key in
          <input
            type="file"
            className="visually-hidden"
            accept="application/json,.json"
            onChange={(event) => void bringIn(event.target.files?.[0])}
          />
        </label>
      </div>
    </section>
  );
}
