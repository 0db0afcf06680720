import { basisInWords } from '../codes/basis.ts';
import type { Decision } from '../decide/decision.ts';
import { worstGrade } from '../decide/signOff.ts';
import { type SignOffReason, signOffReasons, gradeWords } from '../words/signOff.ts';
import type { FactKey } from '../model/fields.ts';
import { type Opening, openingsInOrder, type Project } from '../model/project.ts';
import { inSequence, type Verdict, type Verdicts } from '../model/verdict.ts';
import { differences } from './compare.ts';
import { factSeen, sightOf } from './sight.ts';
import { isApproval, type ReviewState, reviewStateWords } from './words.ts';

/** An entry of the log at one opening, and whether it still speaks of what stands there. */
export interface Standing {
  readonly verdict: Verdict;
  readonly stale: boolean;
  /** The entry that took it back. */
  readonly withdrawnBy: Verdict | null;
  /** What differs from what the reviewer saw, one sentence each. */
  readonly says: readonly string[];
  readonly changedFacts: readonly FactKey[];
  /** Facts that changed without changing what was signed. */
  readonly without: readonly string[];
}

/** One thing that asks for a name at one opening. */
export interface FlagStatus {
  readonly reason: SignOffReason;
  readonly state: ReviewState;
  /** What decides the state: the last word on it. */
  readonly by: Standing | null;
}

export interface ReviewStatus {
  readonly state: ReviewState;
  /** Everything on file at this opening, in the order it was written. */
  readonly marks: readonly Standing[];
  readonly flags: readonly FlagStatus[];
  /** What the standing entries say changed. */
  readonly says: readonly string[];
  readonly changedFacts: readonly FactKey[];
}

const byOpening = new WeakMap<Verdicts, ReadonlyMap<string, readonly Verdict[]>>();

export function verdictsAt({ verdicts }: Pick<Project, 'verdicts'>, openingId: string): readonly Verdict[] {
  let all = byOpening.get(verdicts);
  if (!all) {
    const found = new Map<string, Verdict[]>();
    for (const one of inSequence(verdicts)) {
      for (const id of one.openingIds) {
        const there = found.get(id);
        if (there) there.push(one);
        else found.set(id, [one]);
      }
    }
    byOpening.set(verdicts, (all = found));
  }
  return all.get(openingId) ?? [];
}

/**
 * Whether what was signed still speaks of what stands here. A decision made without the building around it shows none
 * of the building's findings, so what was found there since is seen only in one that knows the building.
 */
export function reviewState(project: Project, opening: Opening, decision: Decision): ReviewStatus {
  const flagged = signOffReasons(decision).filter(({ grade }) => grade !== 'note');
  const written = verdictsAt(project, opening.id);
  if (written.length === 0) {
    const flags = flagged.map((reason) => ({ reason, state: 'open' as const, by: null }));
    const state = flags.length > 0 ? 'open' : 'notNeeded';
    return { state, marks: [], flags, says: [], changedFacts: [] };
  }
  const marks = standings(project, opening, decision, written);
  const flags = flagged.map((reason) => ({ reason, ...lastWord(marks, reason.flag) }));
  const state =
    flags.length === 0 ? lastWord(marks, undefined).state : gravest(flags.map((one) => one.state));
  const stale = state === 'stale' ? marks.filter((one) => one.stale && !one.withdrawnBy) : [];
  return {
    state: flags.length === 0 && state === 'open' ? 'notNeeded' : state,
    marks,
    flags,
    says: [...new Set(stale.flatMap((one) => one.says))],
    changedFacts: [...new Set(stale.flatMap((one) => one.changedFacts))],
  };
}

function standings(
  project: Project,
  opening: Opening,
  decision: Decision,
  written: readonly Verdict[],
): readonly Standing[] {
  const now = sightOf(project, opening, decision);
  return written.map((verdict) => {
    const withdrawnBy = written.find((one) => one.withdraws === verdict.id) ?? null;
    const saw = verdict.saw.openings[opening.id];
    if (!saw || verdict.verdict === 'withdrawn') {
      return { verdict, stale: false, withdrawnBy, says: [], changedFacts: [], without: [] };
    }
    const found = differences(saw, now, (key) => factSeen(decision, key));
    const says = [...found.says, ...basisDiffers(verdict, decision)];
    return {
      verdict,
      stale: says.length > 0,
      withdrawnBy,
      says,
      changedFacts: found.facts,
      without: found.without,
    };
  });
}

/** Entries of an older file kept the basis in words and no rules; with rules each is compared in its own edition. */
function basisDiffers(verdict: Verdict, decision: Decision): readonly string[] {
  const old = Object.values(verdict.saw.openings).some((one) => one.rules === undefined);
  const now = basisInWords(decision.basis);
  if (!old || verdict.saw.basis === '' || verdict.saw.basis === now) return [];
  return [`The code basis was ${verdict.saw.basis} and is now ${now}.`];
}

const speaksOf = (verdict: Verdict, flag: string | undefined) =>
  flag === undefined || verdict.questions.length === 0 || verdict.questions.includes(flag);

/**
 * The last entry about it that was not taken back. A refusal stands beside a later approval until whoever refused
 * takes it back, what was refused changed, or the approval names the document that lifts it.
 */
function lastWord(
  marks: readonly Standing[],
  flag: string | undefined,
): { readonly state: ReviewState; readonly by: Standing | null } {
  const about = marks.filter(
    ({ verdict, withdrawnBy }) =>
      withdrawnBy === null && verdict.verdict !== 'withdrawn' && speaksOf(verdict, flag),
  );
  const last = about.at(-1);
  if (!last) return { state: 'open', by: null };
  const refusal = about.findLast(
    (one, at) =>
      one.verdict.verdict === 'refused' &&
      !one.stale &&
      !about.slice(at + 1).some(({ verdict }) => isApproval(verdict.verdict) && verdict.reference !== ''),
  );
  if (refusal) return { state: 'refused', by: refusal };
  if (last.stale) return { state: 'stale', by: last };
  return { state: last.verdict.verdict as ReviewState, by: last };
}

/** Nothing must be signed for, or it is and still stands. What is stale, refused or with the authority stops. */
export function isSigned({ state, flags }: Pick<ReviewStatus, 'state' | 'flags'>): boolean {
  if (state !== 'open') return isApproval(state) || state === 'notNeeded';
  return flags.every((one) => one.reason.grade !== 'must' || isApproval(one.state));
}

/** Openings that wait for a name, in the order of the schedule: the one count that page, paper and exports show. */
export function unsignedOpenings(
  project: Project,
  decisions: ReadonlyMap<string, Decision>,
): readonly Opening[] {
  return openingsInOrder(project).filter((opening) => {
    const decision = decisions.get(opening.id);
    return decision !== undefined && !isSigned(reviewState(project, opening, decision));
  });
}

const gravity: readonly ReviewState[] = [
  'refused',
  'stale',
  'open',
  'passedToAuthority',
  'approvedWithConditions',
  'approved',
  'notNeeded',
];

export function gravest(states: readonly ReviewState[]): ReviewState {
  return gravity.find((one) => states.includes(one)) ?? 'notNeeded';
}

export interface Signature {
  readonly state: ReviewState;
  /** What is asked for and what is on file, the gravest first; empty where no name is asked for and none was given. */
  readonly words: readonly string[];
  /** The same for a narrow cell: how the word that counts begins. */
  readonly short: string;
}

const shortGrades = { must: 'Must be signed', should: 'Should be looked at' } as const;

/** How a state reads in a narrow cell. */
const inShort = (state: ReviewState) => reviewStateWords[state].split(':', 1)[0] ?? '';

/** Everything that a narrow cell can say of a signature: known before anything is looked at. */
export const shortSignatures: readonly string[] = [
  ...Object.values(shortGrades),
  ...(Object.keys(reviewStateWords) as ReviewState[]).map(inShort),
];

/** Grid, door schedule and opening sheet say these words about names, so a stale verdict is stale in all of them. */
export function signatureOf(project: Project, opening: Opening, decision: Decision): Signature {
  const { state } = reviewState(project, opening, decision);
  const grade = worstGrade(signOffReasons(decision));
  const asked = grade === 'must' || grade === 'should' ? [gradeWords[grade]] : [];
  switch (state) {
    case 'notNeeded':
      return { state, words: [], short: '' };
    case 'open':
      return {
        state,
        words: [...asked, 'Unsigned'],
        short: grade === 'must' || grade === 'should' ? shortGrades[grade] : '',
      };
    case 'approved':
    case 'approvedWithConditions':
      return { state, words: [reviewStateWords[state]], short: reviewStateWords[state] };
    case 'refused':
    case 'passedToAuthority':
    case 'stale':
      return {
        state,
        words: [...asked, reviewStateWords[state]],
        short: inShort(state),
      };
  }
}
