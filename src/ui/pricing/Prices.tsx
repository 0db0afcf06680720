import { linkTo } from '../../app/addresses.ts';
import { useState } from 'react';
import type { Bill } from '../../domain/bid/bill.ts';
import { type BillRow, unitWords } from '../../domain/bid/billRow.ts';
import { readPrice } from '../../domain/bid/prices.ts';
import { itemOf } from '../../domain/devices/items.ts';
import { type ItemEntryField, itemEntryFields } from '../../domain/model/bid.ts';
import type { Project } from '../../domain/model/project.ts';
import { entryOf } from '../../domain/hardware/itemTerms.ts';
import { TextField } from '../project/TextField.tsx';
import { useCommand } from '../project/useCommand.ts';

/** A price for each line, and once an item its finish, key set and parties. An empty price is missing, not nothing. */
export function Prices({ project, bill }: { project: Project; bill: Bill }) {
  const command = useCommand();
  const [all, setAll] = useState(false);
  const rows = all ? bill.rows : bill.missing;
  return (
    <section className="stack" aria-label="Prices">
      <h2>Prices</h2>
      <p className="note">
        Your own, in {project.bid.currency}; none comes with the program. {bill.missing.length} of{' '}
        {bill.rows.length} missing.
      </p>
      <label className="choice">
        <input type="checkbox" checked={all} onChange={() => setAll(!all)} />
        Show items that have a price too
      </label>
      <ul className="pricing-list">
        {rows.map((row) => (
          <li key={row.key} className="stack">
            <p>
              <strong>
                {row.quantity} {unitWords[row.unit]} {row.name}
              </strong>{' '}
              {row.detail}
            </p>
            <div className="pricing-fields">
              <TextField
                label={`Price of ${row.name}`}
                hideLabel
                placeholder="Price"
                at={{ place: `pricing/price/${row.key}`, href: linkTo('pricing') }}
                value={project.prices[row.key]?.amount.toString() ?? ''}
                onKeep={(text) => keepPrice(row, text)}
              />
              {row.item && <ItemFields project={project} item={row.item} />}
            </div>
          </li>
        ))}
      </ul>
    </section>
  );

  function keepPrice({ key, name }: BillRow, text: string): string | undefined {
    const label = `Price of ${name}`;
    if (text.trim() === '') return command(label, [{ kind: 'putPrice', id: key, value: null }]);
    const read = readPrice(project, text);
    if ('says' in read) return read.says;
    return command(label, [{ kind: 'putPrice', id: key, value: { id: key, amount: read.amount } }]);
  }
}

const labels: Record<ItemEntryField, string> = {
  finish: 'Finish (A156.18)',
  keySet: 'Key set',
  suppliedBy: 'Supplied by',
  installedBy: 'Installed by',
  wiredBy: 'Wired by',
};

function ItemFields({ project, item }: { project: Project; item: NonNullable<BillRow['item']> }) {
  const command = useCommand();
  const { finished, keyed } = itemOf(item);
  const entry = entryOf(project, item);
  const fields = itemEntryFields.filter(
    (field) => (field !== 'finish' || finished) && (field !== 'keySet' || keyed),
  );
  return fields.map((field) => (
    <TextField
      key={field}
      label={labels[field]}
      at={{ place: `pricing/item/${item}/${field}`, href: linkTo('pricing') }}
      value={entry[field]}
      help={field === 'finish' ? 'A code, such as 626 or 630.' : undefined}
      onKeep={(text) =>
        command(labels[field], [
          { kind: 'putItemEntry', id: item, value: { ...entry, [field]: text.trim() } },
        ])
      }
    />
  ));
}
