import type { MarkOnFile } from '../../exporting/sheets/markOnFile.ts';
import { StatusMark } from '../face/Mark.tsx';

/** An entry read out: conditions, whether it was taken back, and when it is stale every change, from what to what. */
export function ReviewMark({ mark }: { mark: MarkOnFile }) {
  return (
    <div className={mark.stale ? 'remark remark-accent' : 'remark'}>
      <StatusMark status={mark.stale ? 'stale' : mark.holds ? 'signedOff' : 'needsSignOff'}>
        {mark.stale ? 'Stale' : mark.verdict}
      </StatusMark>
      <p>
        <strong>{mark.says}</strong>
      </p>
      {mark.reason !== '' && <p>{mark.reason}</p>}
      {mark.reference !== '' && <p>Document: {mark.reference}</p>}
      <Lines label="Conditions" lines={mark.conditions} />
      {mark.withdrawn !== '' && <p>{mark.withdrawn}</p>}
      <Lines label="Changed since" lines={mark.changes} />
      {mark.without.length > 0 && (
        <details>
          <summary>Changed since, without changing what was signed</summary>
          <Lines label="Without effect" lines={mark.without} />
        </details>
      )}
    </div>
  );
}

function Lines({ label, lines }: { label: string; lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <ul aria-label={label}>
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}
