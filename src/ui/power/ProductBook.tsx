import { linkTo } from '../../app/addresses.ts';
import { useId, useState } from 'react';
import { randomIds } from '../../app/clock.ts';
import type { Project } from '../../domain/model/project.ts';
import { currentChoices } from '../../domain/project/powerDrafts.ts';
import {
  classChoices,
  emptyProduct,
  pasteColumns,
  productDraftOf,
  productInWords,
  productsInOrder,
  readPasted,
  readProduct,
  suppressorChoices,
} from '../../domain/project/productDrafts.ts';
import { useDraft, useDrafted } from '../parts/useDraft.ts';
import { useCommand } from '../project/useCommand.ts';
import { DraftForm } from './DraftForm.tsx';

type Key = keyof typeof emptyProduct;

const fields = [
  { key: 'part', label: 'Part number' },
  { key: 'maker', label: 'Maker' },
  { key: 'of', label: 'What it is', options: [['', 'Choose'], ...classChoices] },
  { key: 'volts', label: 'Rated', unit: 'V' },
  { key: 'current', label: 'Current', options: currentChoices },
  { key: 'steadyA', label: 'Steady', unit: 'A' },
  { key: 'peakA', label: 'At its start', unit: 'A', help: 'Empty: no more than steady.' },
  { key: 'leastVolts', label: 'Works from', unit: 'V', help: 'Empty: 10 % below its rating.' },
  { key: 'suppressor', label: 'Suppressor', options: suppressorChoices },
  { key: 'listing', label: 'Listing' },
  { key: 'price', label: 'Price' },
] as const;

/** The products of this project, typed or pasted; each takes the place of the usual figures of its kind. */
export function ProductBook({ project }: { project: Project }) {
  const command = useCommand();
  const [editing, setEditing] = useState<string | null>(useDrafted('product/'));
  const keep = (id: string) => (draft: Readonly<Record<Key, string>>) => {
    const read = readProduct(id, draft);
    if (!read.ok) return read;
    const says = command(`Product ${read.value.part}`, [{ kind: 'putProduct', id, value: read.value }]);
    if (says !== undefined) return { field: '', says };
    setEditing(null);
    return undefined;
  };
  const form = (place: string, id: string, start: Readonly<Record<Key, string>>, button: string) => (
    <DraftForm<Key>
      name="Product"
      at={{ place: `product/${place}`, label: 'Product', href: linkTo('power') }}
      fields={fields}
      start={start}
      button={button}
      onKeep={keep(id)}
      onCancel={() => setEditing(null)}
    />
  );
  const rows = productsInOrder(project);
  return (
    <div className="stack">
      <p className="note">
        {rows.length === 0
          ? 'Empty. Currents are upper ends of usual ranges until a product is entered.'
          : 'A product counts wherever its kind and its volts are used.'}
      </p>
      {rows.length > 0 && (
        <ul className="power-products">
          {rows.map((row) =>
            editing === row.id ? (
              <li key={row.id}>{form(row.id, row.id, productDraftOf(row), 'Keep')}</li>
            ) : (
              <li key={row.id} className="row">
                <span>{productInWords(row)}</span>
                <button type="button" className="button button-small" onClick={() => setEditing(row.id)}>
                  Edit<span className="visually-hidden"> {row.part}</span>
                </button>
                <button
                  type="button"
                  className="button button-small button-quiet"
                  onClick={() =>
                    command(`Remove ${row.part}`, [{ kind: 'putProduct', id: row.id, value: null }])
                  }
                >
                  Remove<span className="visually-hidden"> {row.part}</span>
                </button>
              </li>
            ),
          )}
        </ul>
      )}
      {editing === 'new' ? (
        form('new', randomIds(), emptyProduct, 'Add')
      ) : editing === 'paste' ? (
        <Paste onDone={() => setEditing(null)} />
      ) : (
        <div className="row">
          <button type="button" className="button" onClick={() => setEditing('new')}>
            New product
          </button>
          <button type="button" className="button" onClick={() => setEditing('paste')}>
            Paste a list
          </button>
        </div>
      )}
    </div>
  );
}

function Paste({ onDone }: { onDone: () => void }) {
  const command = useCommand();
  const id = useId();
  const kept = useDraft<string>(
    { place: 'product-list', label: 'Products to take', href: linkTo('power') },
    '',
  );
  const text = kept.value;
  const [problems, setProblems] = useState<readonly string[]>([]);
  const take = () => {
    const read = readPasted(text, randomIds);
    if (read.rows.length > 0) {
      command(
        read.says,
        read.rows.map((value) => ({ kind: 'putProduct' as const, id: value.id, value })),
      );
      kept.done();
    }
    setProblems(read.rows.length === 0 && read.problems.length === 0 ? [read.says] : read.problems);
    if (read.rows.length > 0 && read.problems.length === 0) onDone();
  };
  return (
    <div className="stack">
      <div className="field">
        <label htmlFor={id}>One product a line</label>
        <textarea
          id={id}
          className="input"
          rows={6}
          value={text}
          readOnly={kept.isReadOnly}
          onChange={(event) => kept.type(event.target.value)}
        />
        <p className="field-help">Columns in this order, by tab or comma: {pasteColumns.join(', ')}.</p>
      </div>
      {problems.map((says) => (
        <p key={says} role="alert" className="field-error">
          {says}
        </p>
      ))}
      <div className="row">
        <button type="button" className="button button-main" onClick={take}>
          Take them
        </button>
        <button type="button" className="button button-quiet" onClick={onDone}>
          Close
        </button>
      </div>
    </div>
  );
}
