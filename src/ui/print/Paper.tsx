import type { ReactNode } from 'react';
import { standingCaution } from '../../domain/text/cautions.ts';
import { type PaperSize, type SheetId, sheetKinds } from '../../exporting/sheets/sheetKinds.ts';
import type { TitleCell } from '../../exporting/sheets/titleBlock.ts';
import { TitleBlock } from './TitleBlock.tsx';

interface Props {
  readonly id: SheetId;
  readonly paper: PaperSize;
  /** Left out where every page carries its own. */
  readonly title?: readonly TitleCell[];
  readonly children: ReactNode;
}

/** One kind of sheet: on screen as wide as its paper, on paper broken into pages by the printer. */
export function Paper({ id, paper, title, children }: Props) {
  return (
    <section className={`paper paper-${id}`} data-paper={paper} aria-label={sheetKinds[id].name}>
      {title && (
        <header className="paper-head">
          <h2>{sheetKinds[id].name}</h2>
          <TitleBlock cells={title} />
        </header>
      )}
      {children}
      {/* On paper it stands in the margin of every page. */}
      <p className="caution screen-only">{standingCaution}</p>
    </section>
  );
}
