import { candidates } from '../devices/candidates.ts';
import { neverOnRatedDoor } from '../fit/matrix.ts';
import { type Slots, slotOf } from '../logic/slots.ts';
import { type CandidateSet, emptySet, has, include, restrict, setOf } from './candidateSet.ts';
import { type Answers, answersOf, type ClauseSet, lowestBit } from './clauseIndex.ts';
import type { OpenCandidate, Rejection } from './decision.ts';
import { mayBeOutside } from './outsideTable.ts';
import type { ReadyClause, ReadyRow, RuleBook, Step } from './ruleBook.ts';

/** What rules and fit leave of the candidates, and who said so. */
export interface Judgment {
  readonly rejected: CandidateSet;
  /** Neither ruled out nor free of doubt: an unknown fact decides. */
  readonly doubted: CandidateSet;
  readonly sure: readonly ReadyClause[];
  readonly unsure: readonly ReadyClause[];
  readonly rows: readonly ReadyRow[];
  /** None of the rows may be the one: an answer still open may lead out of the table. */
  readonly mayBeOutside: boolean;
  readonly impossible: CandidateSet;
  readonly fitDoubted: CandidateSet;
  /** The step that keeps devices without a label off this door: sure where it is rated, in doubt where it may be. */
  readonly ratedStep: Step | undefined;
}

const ratedSlot = slotOf('fireRated');
const notOnRated = setOf((candidate) => neverOnRatedDoor.includes(candidate.deviceId));
const everyFitted = setOf(({ device }) => device.wired || device.family === 'battery');

export function judge(
  book: RuleBook,
  slots: Slots,
  answers: Answers = answersOf(book.index, slots),
): Judgment {
  const rejected = emptySet();
  const doubted = emptySet();
  const sure: ReadyClause[] = [];
  const unsure: ReadyClause[] = [];
  const { clauses, sets } = book;
  for (let word = 0; word < answers.speak.length; word++) {
    const surely = answers.sure[word] as number;
    let bits = (answers.speak[word] as number) & (sets.prohibits[word] as number);
    for (; bits !== 0; bits &= bits - 1) {
      const ready = clauses[lowestBit(word, bits)] as ReadyClause;
      if ((surely & bits & -bits) !== 0) {
        include(rejected, ready.speaksOf);
        sure.push(ready);
      } else {
        include(doubted, ready.speaksOf);
        unsure.push(ready);
      }
    }
  }
  const { rows, certain } = possibleRows(book, slots);
  const outside = !certain && mayBeOutside(book, slots);
  const { impossible, fitDoubted } = judgeFit(rows, outside, slots);
  include(rejected, impossible);
  include(doubted, fitDoubted);
  const rated = slots[ratedSlot];
  const ratedStep =
    rated === true ? book.ratedStep : rated === undefined ? book.ratedStep.ready.unknown : undefined;
  return { rejected, doubted, sure, unsure, rows, mayBeOutside: outside, impossible, fitDoubted, ratedStep };
}

/** The one row that surely fits the survey, or all that nothing known excludes. */
function possibleRows({ rows, rowIndex }: RuleBook, slots: Slots) {
  const { speak, sure } = answersOf(rowIndex, slots);
  const [certain] = chosenFrom(rows, sure);
  return { rows: certain ? [certain] : chosenFrom(rows, speak), certain: certain !== undefined };
}

function chosenFrom(rows: readonly ReadyRow[], set: ClauseSet): readonly ReadyRow[] {
  const chosen: ReadyRow[] = [];
  for (let word = 0; word < set.length; word++) {
    for (let bits = set[word] as number; bits !== 0; bits &= bits - 1) {
      chosen.push(rows[lowestBit(word, bits)] as ReadyRow);
    }
  }
  return chosen;
}

function judgeFit(rows: readonly ReadyRow[], outside: boolean, slots: Slots) {
  const impossible = emptySet();
  const fitDoubted = emptySet();
  // Outside the table every device but the mechanical ones must be asked about.
  if (outside) include(fitDoubted, everyFitted);
  else impossible.fill(0xffffffff);
  for (const ready of rows) {
    restrict(impossible, ready.impossible);
    include(fitDoubted, ready.impossible);
    include(fitDoubted, ready.doubtful);
  }
  const rated = slots[ratedSlot];
  if (rated === true) include(impossible, notOnRated);
  else if (rated === undefined) include(fitDoubted, notOnRated);
  return { impossible, fitDoubted };
}

/** Every candidate that is ruled out, with all that rules it out. */
export function rejectionsOf(judgment: Judgment): readonly Rejection[] {
  const list: Rejection[] = [];
  for (const candidate of candidates) {
    if (has(judgment.rejected, candidate.index)) {
      list.push({ candidate, because: whyRejected(judgment, candidate.index) });
    }
  }
  return list;
}

export function whyRejected(judgment: Judgment, index: number): readonly Step[] {
  const because: Step[] = [];
  for (const ready of judgment.sure) if (has(ready.speaksOf, index)) because.push(ready.yes);
  if (has(judgment.impossible, index)) {
    const { rows, ratedStep } = judgment;
    // A row says no only when every row that is still possible does.
    if (rows.every((row) => has(row.impossible, index))) for (const row of rows) because.push(row.step);
    if (ratedStep?.sure && has(notOnRated, index)) because.push(ratedStep);
  }
  return because;
}

/** Every candidate that waits for an answer, the best-scoring first, with all that it waits for. */
export function openOf(judgment: Judgment, totals: Int32Array): readonly OpenCandidate[] {
  const list: OpenCandidate[] = [];
  for (const candidate of candidates) {
    const { index } = candidate;
    if (has(judgment.rejected, index) || !has(judgment.doubted, index)) continue;
    list.push({ candidate, because: whyOpen(judgment, index), tenths: totals[index] as number });
  }
  return list.toSorted((a, b) => b.tenths - a.tenths || a.candidate.index - b.candidate.index);
}

export function whyOpen(judgment: Judgment, index: number): readonly Step[] {
  const because: Step[] = [];
  for (const ready of judgment.unsure) if (has(ready.speaksOf, index)) because.push(ready.unknown);
  if (has(judgment.fitDoubted, index)) {
    for (const row of judgment.rows) {
      if (has(row.impossible, index) || has(row.doubtful, index)) because.push(row.unsureStep);
    }
    const { ratedStep } = judgment;
    if (ratedStep && !ratedStep.sure && has(notOnRated, index)) because.push(ratedStep);
  }
  return because;
}
