import type { Decision } from '../../domain/decide/decision.ts';
import type { DecisionReport } from '../../domain/words/report.ts';
import { whyInWords } from '../../domain/words/why.ts';
import type { Photo } from '../../domain/model/photo.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import { fieldInfo } from '../../domain/model/fields.ts';
import { type LeanedOn, leanedOn } from '../../domain/schedules/leanedOn.ts';
import { missingKeys } from '../../domain/sets/missing.ts';
import { type OpeningRow } from '../../domain/schedules/openings.ts';
import { openRemarksOnPaper } from '../../domain/project/remarks.ts';
import { photosAt } from '../../domain/survey/photos.ts';
import { reviewState } from '../../domain/review/status.ts';
import { drawingsAt, openingDrawings } from '../drawing/kinds.ts';
import type { Drawing } from '../drawing/scene.ts';
import { flagsOf } from './flags.ts';
import { type MarkOnFile, marksOnFile } from './markOnFile.ts';
import { type ReasonInFull, reasonsInFull } from './reasons.ts';
import type { Stamp } from './stamp.ts';
import { type TitleCell, titleBlock } from './titleBlock.ts';

/** Everything on the sheet of one opening, in the order in which it is read. */
export interface OpeningSheet {
  readonly id: string;
  readonly mark: string;
  readonly place: string;
  readonly facts: readonly { readonly label: string; readonly value: string }[];
  /** Group, load, sprinklers, detection, alarm, way out: what the decision leans on. */
  readonly leanedOn: readonly LeanedOn[];
  readonly drawings: readonly Drawing[];
  readonly headline: string;
  /** What a name under it stands for, should the lines to sign on come on another page than the rest. */
  readonly signedFor: string;
  readonly stateWord: string;
  readonly stateMeans: string;
  readonly flags: readonly string[];
  readonly arrangement: readonly { readonly label: string; readonly value: string }[];
  /** Why this arrangement and not the next. */
  readonly why: string;
  readonly findings: readonly { readonly says: string; readonly rule: string }[];
  readonly reasons: readonly ReasonInFull[];
  readonly work: DecisionReport['work'];
  readonly items: DecisionReport['items'];
  readonly cautions: readonly { readonly says: string; readonly rule: string }[];
  /** Needed, or ruled out by facts nobody knows yet. */
  readonly maybes: readonly { readonly says: string; readonly rule: string }[];
  readonly missing: readonly string[];
  readonly notes: string;
  /** Comments and questions that nobody has closed. */
  readonly remarks: readonly string[];
  readonly photos: readonly Photo[];
  /** So much is said that drawings and letters are set smaller, to keep it on one page. */
  readonly crowded: boolean;
  readonly onFile: readonly MarkOnFile[];
  readonly title: readonly TitleCell[];
}

export function openingSheet(
  project: Project,
  opening: Opening,
  row: OpeningRow,
  decision: Decision,
  report: DecisionReport,
  stamp: Stamp,
): OpeningSheet {
  const reasons = reasonsInFull(decision);
  const crowded = amountOf(report, reasons) > crowdedFrom;
  return {
    id: opening.id,
    mark: opening.mark,
    place: placeInWords(row),
    facts: filled([
      ['Door', row.doorType],
      ['Size W × H × T', row.size],
      ['Leaf', row.leaf],
      ['Frame', row.frame],
      ['Hand', row.handing],
      ['Fire label', row.label],
    ]),
    leanedOn: leanedOn(decision),
    drawings: drawingsAt(openingDrawings, decision, crowded ? 'crowdedSheet' : 'sheet'),
    headline: report.headline,
    signedFor: `${[`Verdict on ${opening.mark}`, row.set].filter((one) => one !== '').join(', ')}: ${report.headline}`,
    stateWord: report.state.word,
    stateMeans: report.state.means,
    flags: flagsOf(row, decision),
    arrangement: filled([
      ['Set', row.set],
      ['Power lost', row.failMode],
      ['On fire alarm', row.fireAlarm],
    ]),
    why: whyInWords(report),
    findings: report.findings.map((one) => ({ says: one.sentence, rule: one.ruleId })),
    reasons,
    crowded,
    work: report.work,
    // What is included in another line stands under the work already, in the sentence of its rule.
    items: report.items.filter((item) => item.counting !== 'included'),
    cautions: report.cautions.map((one) => ({ says: one.sentence, rule: one.ruleId })),
    maybes: report.maybes.map((one) => ({ says: one.sentence, rule: one.ruleId })),
    missing: missingKeys(project, opening, decision).map((key) => fieldInfo(key).label),
    notes: opening.notes.trim(),
    remarks: openRemarksOnPaper(project, opening.id),
    photos: photosAt(project, opening.id),
    onFile: marksOnFile(reviewState(project, opening, decision)),
    title: titleBlock(project, 'openings', stamp, { label: 'Opening', value: opening.mark }),
  };
}

/** "Ground floor: Main lobby to Cash office". */
export function placeInWords(row: Pick<OpeningRow, 'floor' | 'from' | 'to'>): string {
  const way = [row.from, row.to].filter((one) => one !== '').join(' to ');
  return [row.floor, way].filter((one) => one !== '').join(': ');
}

/** Characters that fit on a page beside drawings of the usual size; found by printing the demo building. */
const crowdedFrom = 1000;

function amountOf(report: DecisionReport, reasons: readonly ReasonInFull[]): number {
  const sentences = [
    ...reasons.map((one) => (one.grade === 'note' ? '' : one.source) + one.sentence),
    ...report.findings.map((one) => one.sentence),
    ...report.cautions.map((one) => one.sentence),
    ...report.maybes.map((one) => one.sentence),
    ...report.work.flatMap(({ lines }) => lines.map((line) => line.sentence)),
  ];
  // A line of hardware takes about as much room as sixty letters of text.
  return sentences.reduce((sum, one) => sum + one.length, 0) + report.items.length * 60;
}

const filled = (pairs: readonly (readonly [string, string])[]) =>
  pairs.filter(([, value]) => value !== '').map(([label, value]) => ({ label, value }));
