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

/** An entry on file with its conditions, whether it was taken back, and what changed since. */
export function OnFile({ mark }: { mark: MarkOnFile }) {
  return (
    <div className="on-file">
      <p>
        <strong>{mark.says}</strong>
        {mark.reason !== '' && `: ${mark.reason}`}
        {mark.reference !== '' && ` (${mark.reference})`}
      </p>
      {mark.conditions.length > 0 && (
        <ul>
          {mark.conditions.map((condition) => (
            <li key={condition}>{condition}</li>
          ))}
        </ul>
      )}
      {mark.withdrawn !== '' && <p>{mark.withdrawn}</p>}
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
