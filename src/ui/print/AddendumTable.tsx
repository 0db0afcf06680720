import type { AddendumSheet } from '../../exporting/sheets/addendumSheet.ts';

/** Only what differs, opening by opening, set by set, quantity by quantity. */
export function AddendumTable({ sheet }: { sheet: AddendumSheet }) {
  return (
    <>
      <h3>{sheet.head}</h3>
      <p className="lead">{sheet.says}</p>
      {sheet.openings.length > 0 && (
        <table className="schedule set-table">
          <thead>
            <tr>
              <th scope="col">Mark</th>
              <th scope="col">What</th>
              <th scope="col">Cells</th>
            </tr>
          </thead>
          <tbody>
            {sheet.openings.map((opening) => (
              <tr key={opening.mark + opening.kind}>
                <th scope="row" className="mark">
                  {opening.mark}
                </th>
                <td>{opening.kind}</td>
                <td>
                  {opening.cells.map((cell) => (
                    <div key={cell}>{cell}</div>
                  ))}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <Rows head="Hardware sets" rows={sheet.sets.map(({ id, says }) => [id, says] as const)} />
      <Rows head="Quantities" rows={sheet.quantities} />
    </>
  );
}

function Rows({ head, rows }: { head: string; rows: readonly (readonly [string, string])[] }) {
  if (rows.length === 0) return null;
  return (
    <section className="set-part" aria-label={head}>
      <h3>{head}</h3>
      <table className="schedule set-table">
        <tbody>
          {rows.map(([name, says]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{says}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
