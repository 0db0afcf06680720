import type { MarkOnFile } from '../../exporting/sheets/markOnFile.ts';
import { StatusMark } from '../face/Mark.tsx';

/** A mark read out, and when it is stale, every fact that changed since, from what to what. */
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
      {mark.changes.length > 0 && (
        <ul aria-label="Changed since">
          {mark.changes.map((change) => (
            <li key={change}>{change}</li>
          ))}
        </ul>
      )}
    </div>
  );
}
