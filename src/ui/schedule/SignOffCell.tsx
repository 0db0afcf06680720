import type { Project } from '../../domain/model/project.ts';
import { signatureOf } from '../../domain/review/status.ts';
import { StatusMark } from '../face/Mark.tsx';
import { reviewMarks } from '../parts/reviewMarks.ts';
import type { GridRow } from '../../domain/grid/columns.ts';

/** The signature of one opening. */
export function SignOffCell({ row, project }: { row: GridRow; project: Project }) {
  const { state, short } = signatureOf(project, row.opening, row.decision);
  return <StatusMark status={reviewMarks[state]}>{short}</StatusMark>;
}
