import { linkTo } from '../../app/addresses.ts';
import type { Project } from '../../domain/model/project.ts';
import type { Undecided } from '../../domain/grid/placeColumns.ts';

interface Props extends Undecided {
  readonly project: Project;
  readonly rowHeightPx: number;
}

/** The schedule at its first sight: the same rows at the same places, and no word of a decision. */
export function UndecidedGrid({ openings, columns, waits, project, rowHeightPx }: Props) {
  const style = {
    gridTemplateColumns: columns.map((column) => `${column.width}rem`).join(' '),
    width: `${columns.reduce((sum, column) => sum + column.width, 0)}rem`,
  };
  return (
    <>
      <p className="note grid-wait">{waits}</p>
      <div className="grid-scroll" role="table" aria-label="Openings, being decided" aria-busy>
        <div className="grid-row grid-head" role="row" style={style}>
          {columns.map((column) => (
            <div key={column.key} role="columnheader" className="grid-cell">
              <span className="lettering">{column.head}</span>
            </div>
          ))}
        </div>
        {openings.map((opening) => (
          <div key={opening.id} className="grid-row" role="row" style={{ ...style, minHeight: rowHeightPx }}>
            {columns.map((column) => {
              const text = column.text({ opening }, { project });
              return (
                <div key={column.key} role="cell" className="grid-cell">
                  {column.key === 'mark' ? (
                    <a className="mark grid-mark" href={linkTo('opening', opening.id)}>
                      {text}
                    </a>
                  ) : (
                    <span>{text}</span>
                  )}
                </div>
              );
            })}
          </div>
        ))}
      </div>
    </>
  );
}
