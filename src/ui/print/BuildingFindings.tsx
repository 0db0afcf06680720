import { noFindings } from '../../domain/building/sentences.ts';
import type { FindingLine, FindingsSheet } from '../../exporting/sheets/findingsSheet.ts';
import { Group, PaperNotes } from './Grouped.tsx';
import { Marks } from './Marks.tsx';
import { Unbroken } from './Unbroken.tsx';

/** What was found about the building, the worst first, in one table whose heads stand on every page. */
export function BuildingFindings({ sheet }: { sheet: FindingsSheet }) {
  if (sheet.groups.length === 0) return <p className="lead">{noFindings}</p>;
  return (
    <>
      <table className="schedule findings-table">
        <thead>
          <tr>
            <th scope="col" className="num">
              No.
            </th>
            <th scope="col">What was found</th>
            <th scope="col">When</th>
            <th scope="col">Openings</th>
            <th scope="col">Way</th>
          </tr>
        </thead>
        {sheet.groups.map((group) => (
          <Group key={group.severity} name={group.severity} says={group.says} span={5}>
            {group.lines.map((line) => (
              <Line key={line.number} line={line} />
            ))}
          </Group>
        ))}
      </table>
      <PaperNotes notes={sheet.notes} />
    </>
  );
}

function Line({ line }: { line: FindingLine }) {
  return (
    <tr>
      <td className="num">{line.number}</td>
      <th scope="row">
        <Unbroken text={line.says} />
        {line.source !== '' && <div className="source">{line.source}</div>}
      </th>
      <td>{line.when}</td>
      <td>
        <Marks marks={line.openings} />
      </td>
      <td>
        <Marks marks={line.way} />
      </td>
    </tr>
  );
}
