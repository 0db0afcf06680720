import type { RegisterEntry } from '../../exporting/sheets/reviewRegister.ts';
import { Reasons } from './Reasons.tsx';
import { OnFile } from './SignLines.tsx';

export function ReviewRegister({ entries, says }: { entries: readonly RegisterEntry[]; says: string }) {
  return (
    <>
      <p className="lead">{says}</p>
      {entries.length > 0 && (
        <table className="schedule register">
          <thead>
            <tr>
              <th scope="col">Mark</th>
              <th scope="col">Place and arrangement</th>
              <th scope="col">Why it needs a name</th>
              <th scope="col">State</th>
              <th scope="col">Verdict, name and date</th>
            </tr>
          </thead>
          <tbody>
            {entries.map((entry) => (
              <tr key={entry.opening.id}>
                <th scope="row" className="mark">
                  {entry.mark}
                </th>
                <td>
                  <div>{entry.place}</div>
                  <div className="register-arrangement">{entry.arrangement}</div>
                </td>
                <td>
                  <Reasons reasons={entry.reasons} />
                </td>
                <td>
                  <div>{entry.stateWord}</div>
                  {entry.onFile && <OnFile mark={entry.onFile} />}
                </td>
                <td className="register-lines">
                  <WriteOn label="Verdict" />
                  <WriteOn label="Name" />
                  <WriteOn label="Date" />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </>
  );
}

function WriteOn({ label }: { label: string }) {
  return <div className="write-on">{label}</div>;
}
