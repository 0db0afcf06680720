import type { BasisSheet } from '../../exporting/sheets/basisSheet.ts';
import { Group } from './Grouped.tsx';

/** Both sides of every difference, opening by opening, with the rules that make it. */
export function BasisTable({ sheet }: { sheet: BasisSheet }) {
  return (
    <table className="schedule findings-table basis-table">
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">{sheet.now}</th>
          <th scope="col">{sheet.instead}</th>
          <th scope="col">Rules that make the difference</th>
        </tr>
      </thead>
      {sheet.groups.map((group) => (
        <Group key={group.mark} name={group.mark} says={group.says} span={4}>
          {group.lines.map((line) => (
            <tr key={line.id}>
              <th scope="row">{line.kind}</th>
              <td>{line.now}</td>
              <td>{line.instead}</td>
              <td>
                {line.rules.map((rule) => (
                  <div key={rule} className="source">
                    {rule}
                  </div>
                ))}
              </td>
            </tr>
          ))}
        </Group>
      ))}
    </table>
  );
}
