import { useApp, useStore } from '../context.ts';

/** Sentences the user must see until they are dismissed. */
export function Notices() {
  const notices = useApp((state) => state.session.notices);
  const newVersion = useApp((state) => state.session.newVersion);
  const store = useStore();
  return (
    <div aria-live="polite" className="notices">
      {newVersion && (
        <div className="message" role="status">
          <p>A newer version of Latchward is ready. It starts when you choose; your work is saved first.</p>
          <button type="button" className="button row-end" onClick={newVersion}>
            Start the new version
          </button>
        </div>
      )}
      {notices.map((notice) => (
        <div key={notice.id} className="message" role={notice.kind === 'problem' ? 'alert' : 'status'}>
          <p>{notice.says}</p>
          {notice.setAside && notice.setAside.length > 0 && (
            <details>
              <summary>{notice.setAside.length} set aside</summary>
              <ul>
                {notice.setAside.map((one) => (
                  <li key={one.where}>
                    <strong>{one.where}</strong>: {one.says}
                    <pre className="code">{JSON.stringify(one.raw)}</pre>
                  </li>
                ))}
              </ul>
            </details>
          )}
          <button
            type="button"
            className="button button-quiet row-end"
            onClick={() => store.getState().putAway(notice.id)}
          >
            Dismiss
          </button>
        </div>
      ))}
    </div>
  );
}
