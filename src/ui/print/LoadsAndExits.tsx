import type { LoadLine, LoadsSheet } from '../../exporting/sheets/loadsSheet.ts';
import { Group, PaperNotes } from './Grouped.tsx';
import { Unbroken } from './Unbroken.tsx';

/** Loads and exits by floor, in one table whose heads stand on every page. */
export function LoadsAndExits({ sheet }: { sheet: LoadsSheet }) {
  if (sheet.floors.length === 0) return <p className="lead">No space is entered.</p>;
  return (
    <>
      {/* Before the table: after it they may come to stand on a page alone. */}
      <PaperNotes notes={sheet.notes} />
      <table className="schedule loads-table">
        <thead>
          <tr>
            <th scope="col">Space</th>
            <th scope="col" className="num">
              People
            </th>
            <th scope="col" className="num">
              Needed
            </th>
            <th scope="col" className="num">
              Found
            </th>
            <th scope="col" className="num">
              Doors pass
            </th>
            <th scope="col">Narrowest door</th>
            <th scope="col">What was found</th>
          </tr>
        </thead>
        {sheet.floors.map((floor) => (
          <Group key={floor.name} name={floor.name} says={floor.says} span={7}>
            {floor.lines.map((line) => (
              <Line key={line.spaceId} line={line} />
            ))}
          </Group>
        ))}
      </table>
    </>
  );
}

function Line({ line }: { line: LoadLine }) {
  return (
    <tr>
      <th scope="row">
        <Unbroken text={line.space} />
      </th>
      <td className="num">
        {line.people}
        {line.standing !== '' && <span className="source"> {line.standing}</span>}
      </td>
      <td className="num">{line.needed}</td>
      <td className="num">{line.found}</td>
      <td className="num">{line.passes}</td>
      <td>
        <Unbroken text={line.narrowest} />
      </td>
      <td>
        {line.findings.length === 0 && line.otherwise}
        {line.findings.map((finding) => (
          <div key={finding.says}>
            {finding.word}: <Unbroken text={finding.says} />
          </div>
        ))}
      </td>
    </tr>
  );
}
