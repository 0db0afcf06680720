import type { BillSheet } from '../../exporting/sheets/billSheet.ts';
import { Group, PaperNotes } from './Grouped.tsx';

/** Articles with quantities, and on a priced bill what each comes to; the sums, allowances and alternates below. */
export function BillTable({ sheet }: { sheet: BillSheet }) {
  const columns = sheet.priced ? 8 : 6;
  return (
    <>
      <table className="schedule bill-table">
        <thead>
          <tr>
            <th scope="col" className="num">
              Quantity
            </th>
            <th scope="col">Unit</th>
            <th scope="col">Item</th>
            <th scope="col">Finish, key set</th>
            <th scope="col">Section</th>
            <th scope="col">By</th>
            {sheet.priced && (
              <>
                <th scope="col" className="num">
                  Unit price
                </th>
                <th scope="col" className="num">
                  Amount
                </th>
              </>
            )}
          </tr>
        </thead>
        {sheet.blocks.map((block) => (
          <Group key={block.head} name={block.head} says={block.says} span={columns}>
            {block.lines.map((line) => (
              <tr key={line.key}>
                <td className="num">{line.quantity}</td>
                <td>{line.unit}</td>
                <th scope="row">
                  {line.name}
                  {line.detail !== '' && <span className="set-detail">{line.detail}</span>}
                </th>
                <td>{line.finish}</td>
                <td className="bill-section">{line.section}</td>
                <td>{line.trade}</td>
                {sheet.priced && (
                  <>
                    <td className="num">{line.unitPrice}</td>
                    <td className="num">{line.amount}</td>
                  </>
                )}
              </tr>
            ))}
          </Group>
        ))}
      </table>
      <div className="bill-parts">
        {sheet.totals.map((group) => (
          <Pairs key={group.head} head={group.head} lines={group.lines} />
        ))}
        {sheet.alternates.length > 0 && (
          <Pairs head="Alternates, and what each saves" lines={sheet.alternates} />
        )}
        {sheet.allowances.length > 0 && (
          <section className="set-part" aria-label="Allowances">
            <h3>Allowances: openings that may not be ordered yet</h3>
            <table className="schedule set-table">
              <tbody>
                {sheet.allowances.map((one) => (
                  <tr key={one.mark}>
                    <th scope="row" className="mark">
                      {one.mark}
                    </th>
                    <td>{one.because}</td>
                    <td className="num bill-sum">{one.range}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </section>
        )}
      </div>
      <PaperNotes notes={sheet.notes} />
    </>
  );
}

function Pairs({ head, lines }: { head: string; lines: readonly (readonly [string, string])[] }) {
  return (
    <section className="set-part" aria-label={head}>
      <h3>{head}</h3>
      <table className="schedule set-table">
        <tbody>
          {lines.map(([name, value]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td className="num bill-sum">{value}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
