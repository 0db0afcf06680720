import type { PowerSheet } from '../../exporting/sheets/powerSheet.ts';

/** What is ordered, by whom it is furnished, installed and wired, and what of it goes to which closet. */
export function Takeoff({ sheet }: { sheet: Pick<PowerSheet, 'takeoff' | 'byCloset' | 'poe'> }) {
  if (sheet.takeoff.length === 0) return <p className="note">Nothing is fed yet.</p>;
  return (
    <>
      <table className="schedule schedule-close schedule-folds">
        <thead>
          <tr>
            <th scope="col">Item</th>
            <th scope="col">Takes</th>
            <th scope="col">Order</th>
            <th scope="col">Furnished</th>
            <th scope="col">Installed</th>
            <th scope="col">Wired</th>
            <th scope="col">Section</th>
          </tr>
        </thead>
        <tbody>
          {sheet.takeoff.map((row) => (
            <tr key={row.article}>
              <th scope="row">{row.article}</th>
              <td data-head="Takes">{row.quantity}</td>
              <td data-head="Order">{row.order}</td>
              <td data-head="Furnished">{row.furnished}</td>
              <td data-head="Installed">{row.installed}</td>
              <td data-head="Wired">{row.wired}</td>
              <td data-head="Section">{row.section}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {sheet.poe.map((says) => (
        <p key={says}>{says}</p>
      ))}
      {sheet.byCloset.map(({ name, says }) => (
        <details key={name}>
          <summary>{name}</summary>
          <ul>
            {says.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </details>
      ))}
    </>
  );
}
