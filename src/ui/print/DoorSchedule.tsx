import { Group, PaperNotes } from './Grouped.tsx';
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
          <Group key={group.floor} name={group.floor} says={group.says} span={scheduleColumns.length}>
            {group.lines.map((line) => (
              <Line key={line.id} line={line} />
            ))}
          </Group>
        ))}
      </table>
      <PaperNotes notes={sheet.notes} />
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
          <Says says={cell.says} />
        </td>
      ))}
    </tr>
  );
}

/** A paragraph of its own only where there are several: thousands of rows are held in memory while they print. */
function Says({ says }: { says: readonly string[] }) {
  const [only, ...others] = says;
  if (only !== undefined && others.length === 0) return <Unbroken text={only} />;
  return says.map((one) => (
    <div key={one}>
      <Unbroken text={one} />
    </div>
  ));
}
