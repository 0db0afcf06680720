import { memo, type ReactNode } from 'react';
import type { SheetId } from '../../exporting/sheets/sheetKinds.ts';
import {
  BillPart,
  FindingsPart,
  LoadsPart,
  PacketPart,
  PowerPart,
  RegisterPart,
  SchedulePart,
  SequencePart,
  SetsPart,
} from './CutSheets.tsx';
import { DiagramsPart, OpeningsPart, TestsPart } from './SheetsByOpening.tsx';
import type { OfPiece, SheetProps } from './sheetProps.ts';
import { AddendumPart, BasisPart, CoverPart, LegendPart, PlansPart } from './WholeSheets.tsx';

/** The sheets of one run of the printer, in the order in which they are bound. Drawn again only when one of them changed. */
export const Sheets = memo(function Sheets({ part, ...props }: SheetProps) {
  if (props.decisions.size === 0) return <p className="empty">There are no openings to print yet.</p>;
  return part.map((piece) => {
    const Sheet = sheets[piece.id];
    return <Sheet key={piece.id} {...props} piece={piece} />;
  });
});

const sheets: Record<SheetId, (props: OfPiece) => ReactNode> = {
  cover: CoverPart,
  addendum: AddendumPart,
  schedule: SchedulePart,
  sets: SetsPart,
  quantities: BillPart,
  bill: BillPart,
  sequence: SequencePart,
  openings: OpeningsPart,
  diagrams: DiagramsPart,
  power: PowerPart,
  tests: TestsPart,
  register: RegisterPart,
  packet: PacketPart,
  findings: FindingsPart,
  loads: LoadsPart,
  basis: BasisPart,
  plans: PlansPart,
  legend: LegendPart,
};
