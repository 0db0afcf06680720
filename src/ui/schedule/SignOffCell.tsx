import { type GridRow, type Ground, signatureAt } from '../../domain/grid/columns.ts';
import { StatusMark } from '../face/Mark.tsx';
import { reviewMarks } from '../parts/reviewMarks.ts';

/** The signature of one opening. */
export function SignOffCell({ row, ground }: { row: GridRow; ground: Ground }) {
  const { state, short } = signatureAt(row, ground);
  return <StatusMark status={reviewMarks[state]}>{short}</StatusMark>;
}
