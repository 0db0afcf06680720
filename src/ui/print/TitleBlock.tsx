import type { TitleCell } from '../../exporting/sheets/titleBlock.ts';

/** Whose sheet it is, what is on it and under which code basis. */
export function TitleBlock({ cells }: { cells: readonly TitleCell[] }) {
  return (
    <dl className="title-block">
      {cells.map((cell) => (
        <div key={cell.label} className={cell.wide ? 'title-block-wide' : undefined}>
          <dt>{cell.label}</dt>
          <dd>{cell.value}</dd>
        </div>
      ))}
    </dl>
  );
}
