import { type Decision, type Decisions } from '../../domain/decide/decision.ts';
import { maybesInShort, maybesOf } from '../../domain/words/maybe.ts';
import { worstGrade } from '../../domain/decide/signOff.ts';
import { candidateInWords } from '../../domain/words/arrangement.ts';
import { stateWords } from '../../domain/words/states.ts';
import { type Opening, type Project, openingsInOrder } from '../../domain/model/project.ts';
import { type LeanedOn, leanedOn } from '../../domain/schedules/leanedOn.ts';
import { reviewState, type ReviewStatus } from '../../domain/review/status.ts';
import { reviewStateWords } from '../../domain/review/words.ts';
import { type MarkOnFile, marksOnFile } from './markOnFile.ts';
import { placeInWords } from './openingSheet.ts';
import { type ReasonInFull, reasonsInFull } from './reasons.ts';
import { counted } from '../../domain/text/counted.ts';

/** One opening that needs a name, or has one. */
export interface RegisterEntry {
  readonly opening: Opening;
  readonly decision: Decision;
  readonly mark: string;
  readonly place: string;
  readonly arrangement: string;
  readonly leanedOn: readonly LeanedOn[];
  readonly grade: 'must' | 'should' | 'none';
  readonly reasons: readonly ReasonInFull[];
  /** What may yet be needed, by facts nobody knows; of much of it only how much. */
  readonly maybes: readonly string[];
  readonly status: ReviewStatus;
  readonly stateWord: string;
  readonly onFile: readonly MarkOnFile[];
}

const gradeOrder = { must: 0, should: 1, none: 2 } as const;

/** Openings a reviewer must sign come first, then those to look at, then those that only carry an old mark. */
export function reviewRegister(project: Project, decisions: Decisions): readonly RegisterEntry[] {
  return openingsInOrder(project)
    .flatMap((opening) => {
      const decision = decisions.get(opening.id);
      const entry = decision && entryOf(project, opening, decision);
      return entry && (entry.grade !== 'none' || entry.status.marks.length > 0) ? [entry] : [];
    })
    .toSorted((a, b) => gradeOrder[a.grade] - gradeOrder[b.grade]);
}

function entryOf(project: Project, opening: Opening, decision: Decision): RegisterEntry {
  const reasons = reasonsInFull(decision);
  const worst = worstGrade(reasons);
  const status = reviewState(project, opening, decision);
  const space = (id: string | null) => (id === null ? '' : (project.spaces[id]?.name ?? ''));
  return {
    opening,
    decision,
    mark: opening.mark,
    place: placeInWords({
      floor: opening.floorId === null ? '' : (project.floors[opening.floorId]?.name ?? ''),
      from: space(opening.fromSpaceId),
      to: space(opening.toSpaceId),
    }),
    arrangement: decision.chosen
      ? candidateInWords(decision.chosen.candidate)
      : stateWords[decision.state].means,
    leanedOn: leanedOn(decision),
    grade: worst === 'must' || worst === 'should' ? worst : 'none',
    // A note asks nothing of a reviewer; it would only lengthen what must be read.
    reasons: reasons.filter((reason) => reason.grade !== 'note'),
    maybes: maybesInShort(maybesOf(decision)),
    status,
    stateWord: reviewStateWords[status.state],
    onFile: marksOnFile(status),
  };
}

/** "4 openings on the register; 3 unsigned, 1 stale. 2 lines about the building need a signature as well." */
export function registerInWords(entries: readonly RegisterEntry[], aboutBuilding = 0): string {
  const building =
    aboutBuilding === 0
      ? ''
      : ` ${counted(aboutBuilding, 'line')} about the building ${aboutBuilding === 1 ? 'needs' : 'need'} a signature${entries.length === 0 ? '' : ' as well'}.`;
  if (entries.length === 0)
    return `The rules here required no signature at any opening. That is not a review.${building}`;
  const waiting = entries.filter((entry) => entry.status.state === 'open').length;
  const stale = entries.filter((entry) => entry.status.state === 'stale').length;
  return `${counted(entries.length, 'opening')} on the register; ${waiting} unsigned, ${stale} stale.${building}`;
}
