import { maybeNeeded } from '../../domain/words/maybe.ts';
import type { BuildingLine } from '../../exporting/sheets/buildingLines.ts';
import type { RegisterEntry } from '../../exporting/sheets/reviewRegister.ts';
import { Marks } from './Marks.tsx';
import { Pairs } from './Pairs.tsx';
import { Reasons } from './Reasons.tsx';
import { OnFile } from './SignLines.tsx';

interface Props {
  readonly entries: readonly RegisterEntry[];
  /** What needs a name and is no single opening; it stands first. */
  readonly building: readonly BuildingLine[];
  readonly says: string;
}

export function ReviewRegister({ entries, building, says }: Props) {
  return (
    <>
      <p className="lead">{says}</p>
      {entries.length + building.length > 0 && (
        <table className="schedule register">
          <thead>
            <tr>
              <th scope="col">Mark</th>
              <th scope="col">Place and arrangement</th>
              <th scope="col">Why it needs a signature</th>
              <th scope="col">State</th>
              <th scope="col">Verdict, name and date</th>
            </tr>
          </thead>
          <tbody>
            {building.map((line) => (
              <tr key={line.id}>
                <th scope="row">Building</th>
                <td>
                  <Marks marks={line.openings.map((opening) => opening.mark)} />
                </td>
                <td>
                  <Reasons reasons={[line.reason]} />
                </td>
                <td>{line.stateWord}</td>
                <VerdictLines />
              </tr>
            ))}
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
                  <Pairs pairs={entry.leanedOn} />
                  {entry.maybes.length > 0 && (
                    <p>
                      {maybeNeeded}: {entry.maybes.join(' ')}
                    </p>
                  )}
                </td>
                <td>
                  <div>{entry.stateWord}</div>
                  {entry.onFile.map((mark) => (
                    <OnFile key={mark.id} mark={mark} />
                  ))}
                </td>
                <VerdictLines />
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </>
  );
}

function VerdictLines() {
  return (
    <td className="register-lines">
      <WriteOn label="Verdict" />
      <WriteOn label="Name" />
      <WriteOn label="Date" />
    </td>
  );
}

function WriteOn({ label }: { label: string }) {
  return <div className="write-on">{label}</div>;
}
