import { basisInWords } from '../../domain/codes/basis.ts';
import type { Bill } from '../../domain/bid/bill.ts';
import { openQuestions } from '../../domain/bid/openQuestions.ts';
import type { Decision } from '../../domain/decide/decision.ts';
import type { Project } from '../../domain/model/project.ts';
import { counted } from '../../domain/text/counted.ts';
import { dayInWords } from './day.ts';
import { type SheetId, sheetIds, sheetKinds } from './sheetKinds.ts';
import { editionInWords, type Stamp, statusInWords } from './stamp.ts';

export interface CoverSheet {
  readonly name: string;
  readonly facts: readonly { readonly label: string; readonly value: string }[];
  /** "PRELIMINARY: …", or that nothing stands in the way. */
  readonly standing: string;
  readonly questions: readonly string[];
  readonly contents: readonly string[];
  /** How much is missing for a bid, counted. */
  readonly missing: readonly string[];
}

const notStated = 'not stated';

/** The first sheet: whose building, which edition, how far it may be relied on, what is still to be asked, and what follows. */
export function coverSheet(
  project: Project,
  decisions: ReadonlyMap<string, Decision>,
  bill: Bill,
  stamp: Stamp,
  sheets: ReadonlySet<SheetId>,
): CoverSheet {
  const { bid } = project;
  const questions = openQuestions(project, decisions, bill);
  return {
    name: project.name,
    facts: [
      { label: 'Address', value: bid.address || notStated },
      { label: 'Project number', value: bid.projectNumber || notStated },
      { label: 'Edition', value: editionInWords(stamp) },
      { label: 'Status', value: statusInWords(stamp) },
      ...(stamp.issued ? [{ label: 'Issued by', value: stamp.issued.by || notStated }] : []),
      { label: 'Printed', value: dayInWords(stamp.day) },
      { label: 'Prepared by', value: project.preparedBy || notStated },
      { label: 'Jurisdiction', value: project.jurisdiction || notStated },
      { label: 'Code basis', value: basisInWords(project.basis) },
      { label: 'Openings', value: String(decisions.size) },
    ],
    standing: stamp.standing || 'Every opening is settled, complete and signed where a signature is due.',
    questions,
    contents: sheetIds.filter((id) => id !== 'cover' && sheets.has(id)).map((id) => sheetKinds[id].name),
    missing: [
      `${counted(bill.missing.length, 'price')} of ${bill.rows.length} missing.`,
      `${counted(bill.allowances.length, 'opening')} of ${decisions.size} not in the base sum.`,
      `${counted(questions.length, 'question')} open.`,
    ],
  };
}
