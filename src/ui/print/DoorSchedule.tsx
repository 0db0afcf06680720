import { Unbroken } from './Unbroken.tsx';
import {
  scheduleColumns,
  type ScheduleLine,
  type ScheduleSheet,
} from '../../exporting/sheets/doorSchedule.ts';

/** One table for the whole building, so that columns stand under each other on every page. */
export function DoorSchedule({ sheet }: { sheet: ScheduleSheet }) {
  return (
    <>
      <table className="schedule door-schedule">
        <colgroup>
          {scheduleColumns.map((column) => (
            <col key={column.key} style={{ width: `${column.share}%` }} />
          ))}
        </colgroup>
        <thead>
          <tr className="families">
            {sheet.families.map((family) => (
              <th key={family.name} colSpan={family.span} scope="colgroup">
                {family.name}
              </th>
            ))}
          </tr>
          <tr>
            {scheduleColumns.map((column) => (
              <th key={column.key} scope="col" data-column={column.key}>
                {column.head}
              </th>
            ))}
          </tr>
        </thead>
        {sheet.floors.map((group) => (
          <tbody key={group.floor}>
            <tr className="group-row">
              <th colSpan={scheduleColumns.length} scope="rowgroup">
                {group.floor} <span className="group-count">{group.says}</span>
              </th>
            </tr>
            {group.lines.map((line) => (
              <Line key={line.id} line={line} />
            ))}
          </tbody>
        ))}
      </table>
      <ul className="paper-notes">
        {sheet.notes.map((note) => (
          <li key={note}>{note}</li>
        ))}
      </ul>
    </>
  );
}

function Line({ line }: { line: ScheduleLine }) {
  return (
    <tr>
      <th scope="row" className="mark">
        {line.mark}
      </th>
      {line.cells.map((cell) => (
        <td key={cell.key} data-column={cell.key} data-strong={cell.strong || undefined}>
          {cell.says.map((says) => (
            <div key={says}>
              <Unbroken text={says} />
            </div>
          ))}
        </td>
      ))}
    </tr>
  );
}
