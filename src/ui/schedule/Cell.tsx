import { linkTo } from '../../app/addresses.ts';
import type { GridColumn, GridRow, Ground } from '../../domain/grid/columns.ts';
import { headWords } from '../../domain/grid/keys.ts';
import { DecisionStateMark } from '../parts/DecisionStateMark.tsx';
import { SignOffCell } from './SignOffCell.tsx';

interface Props {
  readonly column: GridColumn;
  readonly row: GridRow;
  readonly ground: Ground;
}

/** What a cell of the grid shows: a mark that leads to its opening, a state, an assumed or a missing value. */
export function Cell({ column, row, ground }: Props) {
  const text = column.text(row, ground);
  if (column.key === 'state') return <DecisionStateMark state={row.state} />;
  if (column.key === 'mark') {
    return (
      <>
        <span className="grid-row-head" aria-hidden="true" title={headWords.row} data-head="row">
          ▸
        </span>
        <a
          className="mark grid-mark"
          tabIndex={-1}
          draggable={false}
          href={linkTo('opening', row.opening.id)}
        >
          {text}
        </a>
      </>
    );
  }
  if (column.key === 'signOff' && text !== '—') return <SignOffCell row={row} ground={ground} />;
  if (text === '?') {
    return (
      <span className="value-unknown" title="Not surveyed">
        ?<span className="visually-hidden"> not surveyed</span>
      </span>
    );
  }
  const assumed = column.fact && row.decision.assumed.get(column.fact);
  if (assumed === undefined && column.field !== 'notes') return text;
  return (
    <span
      className={assumed === undefined ? undefined : 'value-assumed'}
      title={assumed}
      data-paragraphs={column.field === 'notes' || undefined}
    >
      {text}
    </span>
  );
}
