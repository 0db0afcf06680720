import type { MarkOnFile } from '../../exporting/sheets/markOnFile.ts';

const lines = ['Verdict', 'Name', 'Date', 'Signature'] as const;

/** Lines to write on. */
export function SignLines() {
  return (
    <div className="sign-lines">
      <dl>
        {lines.map((line) => (
          <div key={line} className={`sign-${line.toLowerCase()}`}>
            <dt>{line}</dt>
            <dd />
          </div>
        ))}
      </dl>
    </div>
  );
}

/** The mark on file, with what changed since. */
export function OnFile({ mark }: { mark: MarkOnFile }) {
  return (
    <div className="on-file">
      <p>
        <strong>{mark.says}</strong>
        {mark.reason !== '' && `: ${mark.reason}`}
      </p>
      {mark.stale && (
        <>
          <p>
            <strong>Stale.</strong> Changed since:
          </p>
          <ul>
            {mark.changes.map((change) => (
              <li key={change}>{change}</li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}
