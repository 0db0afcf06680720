import type { SheetData } from '../../app/sheetData.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import { type OtherBasisChoice } from '../../domain/schedules/otherBasis.ts';
import type { Decisions } from '../../domain/decide/decision.ts';
import type { AddendumSheet } from '../../exporting/sheets/addendumSheet.ts';
import { type Piece, type PrintPart, rangeInWords } from '../../exporting/sheets/parts.ts';
import type { PaperSize, SheetId } from '../../exporting/sheets/sheetKinds.ts';
import type { Stamp } from '../../exporting/sheets/stamp.ts';
import { holds, titleBlock } from '../../exporting/sheets/titleBlock.ts';

export interface SheetProps {
  readonly project: Project;
  readonly decisions: Decisions;
  readonly data: SheetData;
  readonly shown: readonly Opening[];
  /** All that was chosen; the cover lists it. */
  readonly sheets: ReadonlySet<SheetId>;
  /** What of it is laid out. */
  readonly part: PrintPart;
  readonly paper: PaperSize;
  readonly stamp: Stamp;
  readonly otherBasis: OtherBasisChoice | null;
  readonly addendum: AddendumSheet | null;
  /** To the authority, as it was edited. */
  readonly letter: string;
}
/** One sheet of them, or as much of it as goes to the printer at once. */
export interface OfPiece extends Omit<SheetProps, 'part'> {
  readonly piece: Piece;
}

/** The title block of a sheet, with how much it holds and which of it this is. */
export const titleOf = ({ project, stamp, piece }: OfPiece, says?: string) =>
  titleBlock(
    project,
    piece.id,
    stamp,
    says === undefined ? undefined : holds([says, rangeInWords(piece)].filter(Boolean).join(': ')),
  );
export const isFirst = ({ from }: Piece) => from === 0;
export const isLast = ({ to, of }: Piece) => to >= of;
