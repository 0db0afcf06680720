import type { Project } from '../../domain/model/project.ts';
import { DecisionStateMark } from '../parts/DecisionStateMark.tsx';
import type { Column, GridRow } from './columns.ts';
import { SignOffCell } from './SignOffCell.tsx';

/** What a cell of the grid shows: a mark that leads to its opening, a state, an assumed or a missing value. */
export function Cell({ column, row, project }: { column: Column; row: GridRow; project: Project }) {
  const text = column.text(row, project);
  if (column.key === 'state') return <DecisionStateMark state={row.state} />;
  if (column.key === 'mark') {
    return (
      <a className="mark grid-mark" tabIndex={-1} href={`#/opening/${encodeURIComponent(row.opening.id)}`}>
        {text}
      </a>
    );
  }
  if (column.key === 'signOff' && text !== '—') return <SignOffCell row={row} project={project} />;
  if (text === '?') {
    return (
      <span className="value-unknown" title="Not surveyed">
        ?<span className="visually-hidden"> not surveyed</span>
      </span>
    );
  }
  const assumed = column.fact && row.decision.assumed.get(column.fact);
  return (
    <span className={assumed === undefined ? undefined : 'value-assumed'} title={assumed}>
      {text}
    </span>
  );
}
