import { basisInWords } from '../../domain/codes/basis.ts';
import type { Project } from '../../domain/model/project.ts';
import { dayInWords } from './day.ts';
import { type SheetId, sheetIds, sheetKinds } from './sheetKinds.ts';
import { editionInWords, type Stamp, statusInWords } from './stamp.ts';

export interface TitleCell {
  readonly label: string;
  readonly value: string;
  /** Takes the room of two cells. */
  readonly wide?: true;
}

/** `last` is the cell that differs from sheet to sheet: how much it holds, or which opening it shows. */
export function titleBlock(
  project: Project,
  sheet: SheetId,
  stamp: Stamp,
  last?: TitleCell,
): readonly TitleCell[] {
  return [
    { label: 'Project', value: project.name, wide: true },
    { label: 'Code basis', value: basisInWords(project.basis), wide: true },
    { label: 'Basis confirmed', value: basisStanding(project) },
    { label: 'Jurisdiction', value: project.jurisdiction || notStated },
    { label: 'Prepared by', value: project.preparedBy || notStated },
    { label: 'Drawn, checked', value: drawnAndChecked(project) },
    { label: 'Printed', value: dayInWords(stamp.day) },
    { label: 'Sheet', value: `${sheetNumber(sheet)} ${sheetKinds[sheet].name}` },
    { label: 'Edition', value: editionInWords(stamp), wide: true },
    { label: 'Status', value: statusInWords(stamp) },
    ...(last ? [last] : []),
  ];
}

const notStated = 'not stated';

/** "A-2": where the sheet stands among all kinds of sheet, whichever are printed. */
export function sheetNumber(sheet: SheetId): string {
  return `A-${sheetIds.indexOf(sheet)}`;
}

function drawnAndChecked({ bid }: Project): string {
  return `${bid.drawnBy || notStated}, ${bid.checkedBy || notStated}`;
}

/** On what footing the code basis stands: it decides whether a bidder may rely on the sheet. */
function basisStanding(project: Project): string {
  const fact = project.building.basisConfirmed;
  if (fact === undefined || fact.is === 'unknown') return 'not asked yet';
  if (!fact.value) return 'no';
  return fact.is === 'assumed' ? 'assumed' : 'yes';
}

export const holds = (value: string): TitleCell => ({ label: 'Holds', value });
