import type { SetBlock, SetSheet } from '../../exporting/sheets/setSheet.ts';
import { Marks } from './Marks.tsx';

export function HardwareSets({ sheet }: { sheet: SetSheet }) {
  return (
    <>
      <ul className="paper-notes">
        {sheet.notes.map((note) => (
          <li key={note}>{note}</li>
        ))}
      </ul>
      {sheet.sets.map((set) => (
        <OneSet key={set.id} set={set} />
      ))}
      {sheet.without.length > 0 && (
        <section className="set-block">
          <h3>Without a set</h3>
          <Marks marks={sheet.without} />
        </section>
      )}
    </>
  );
}

function OneSet({ set }: { set: SetBlock }) {
  return (
    <section className="set-block" aria-label={`${set.id} ${set.title}`}>
      <h3>
        <span className="mark">{set.id}</span> {set.title}
      </h3>
      <p className="set-says">{set.says}</p>
      <p className="set-marks">
        <span className="lettering">{set.count}</span> <Marks marks={set.marks} />
      </p>
      {set.unsettled !== '' && <p className="set-unsettled">{set.unsettled}</p>}
      <table className="schedule set-table">
        <thead>
          <tr>
            <th scope="col" className="num">
              Each
            </th>
            <th scope="col" className="num">
              Total
            </th>
            <th scope="col">Item</th>
            <th scope="col">Standard</th>
            <th scope="col">By</th>
            <th scope="col">Asked for by</th>
          </tr>
        </thead>
        <tbody>
          {set.lines.map((line) => (
            <tr key={line.item}>
              <td className="num">{line.eachSays}</td>
              <td className="num">{line.totalSays}</td>
              <th scope="row">
                {line.name}
                {line.detail !== '' && <span className="set-detail">{line.detail}</span>}
              </th>
              <td>{line.standard}</td>
              <td>{line.trade}</td>
              <td>{line.ruleIds.join(', ')}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
