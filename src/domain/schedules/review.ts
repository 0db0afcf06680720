import { basisInWords } from '../codes/basis.ts';
import { candidateById } from '../devices/candidates.ts';
import type { Decision } from '../decide/decision.ts';
import { valueIn } from '../decide/factView.ts';
import { factsIn } from '../decide/ruleBook.ts';
import { signOffReasons, worstGrade } from '../decide/signOff.ts';
import { candidateInWords, gradeWords } from '../decide/words.ts';
import { valueInSentence } from '../text/format.ts';
import { type FactKey, fieldInfo, isFactKey } from '../model/fields.ts';
import type { Opening, Review } from '../model/project.ts';

export type ReviewState = 'notNeeded' | 'open' | 'approved' | 'refused' | 'toAhj' | 'stale';

export const reviewStateWords: Record<ReviewState, string> = {
  notNeeded: 'Not needed',
  open: 'Waits for a reviewer',
  approved: 'Approved',
  refused: 'Refused',
  toAhj: 'With the authority',
  stale: 'Stale: changed since it was reviewed',
};

export interface ReviewStatus {
  readonly state: ReviewState;
  /** The mark on file, also while it is stale. */
  readonly review: Review | null;
  readonly changedFacts: readonly FactKey[];
  readonly candidateChanged: boolean;
  readonly basisChanged: boolean;
  /** A severe finding came or went. */
  readonly severeChanged: boolean;
  /** What differs from what the reviewer saw, one sentence each. */
  readonly says: readonly string[];
}

type Value = string | number | boolean;
export interface Saw {
  readonly candidate: string | null;
  readonly basis: string;
  readonly facts: Readonly<Record<string, Value | null>>;
  readonly severe: Readonly<Record<string, string>>;
}

/** What lies before a reviewer at this moment; kept with the mark. A fact that is unknown is kept as null. */
export function whatReviewerSaw(decision: Decision): Saw {
  const facts: Record<string, Value | null> = {};
  for (const key of factsIn(decision.relied)) facts[key] = valueIn(decision.slots, key) ?? null;
  return {
    candidate: decision.chosen?.candidate.id ?? null,
    basis: basisInWords(decision.basis),
    facts,
    severe: Object.fromEntries(decision.severe.map(({ key, says }) => [key, says])),
  };
}

/**
 * Whether a mark still speaks of what stands here. A new mark number, note or room name changes nothing a
 * reviewer judged; the arrangement, the code basis, every fact relied on and every severe finding do.
 */
export function reviewState(opening: Opening, decision: Decision): ReviewStatus {
  const { review } = opening;
  if (review === null) {
    const grade = worstGrade(signOffReasons(decision));
    const state = grade === 'must' || grade === 'should' ? 'open' : 'notNeeded';
    return {
      state,
      review,
      changedFacts: [],
      candidateChanged: false,
      basisChanged: false,
      severeChanged: false,
      says: [],
    };
  }
  const now = whatReviewerSaw(decision);
  const candidateChanged = review.saw.candidate !== now.candidate;
  const basisChanged = review.saw.basis !== now.basis;
  const changedFacts = factsThatDiffer(review, decision, now);
  const severe = severeThatDiffers(review.saw.severe ?? {}, now.severe);
  const severeChanged = severe.length > 0;
  const stale = candidateChanged || basisChanged || severeChanged || changedFacts.length > 0;
  return {
    state: stale ? 'stale' : review.verdict,
    review,
    changedFacts,
    candidateChanged,
    basisChanged,
    severeChanged,
    says: stale ? [...sentences(review, decision, now, changedFacts), ...severe] : [],
  };
}

export interface Signature {
  readonly state: ReviewState;
  /** What is asked for and what is on file, the gravest first; empty where no name is asked for and none was given. */
  readonly words: readonly string[];
  /** The same for a narrow cell: how the word that counts begins. */
  readonly short: string;
}

const shortGrades = { must: 'Must be signed', should: 'Should be looked at' } as const;

/** Grid, door schedule and opening sheet say these words about names, so a stale mark is stale in all of them. */
export function signatureOf(opening: Opening, decision: Decision): Signature {
  const { state } = reviewState(opening, decision);
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
      return { state, words: [reviewStateWords.approved], short: reviewStateWords.approved };
    case 'refused':
    case 'toAhj':
    case 'stale':
      return {
        state,
        words: [...asked, reviewStateWords[state]],
        short: reviewStateWords[state].split(':', 1)[0] ?? '',
      };
  }
}

/** Facts the reviewer saw with another value, and facts the decision rests on today that were not before them. */
function factsThatDiffer(review: Review, decision: Decision, now: Saw): readonly FactKey[] {
  const keys = new Set([...Object.keys(review.saw.facts), ...Object.keys(now.facts)]);
  return [...keys].filter((key): key is FactKey => {
    // A fact of a newer version cannot be compared here and must not make every mark stale.
    if (!isFactKey(key)) return false;
    const before = review.saw.facts[key] ?? null;
    return before !== (valueIn(decision.slots, key) ?? null);
  });
}

/** Severe findings the reviewer did not see, and those that are gone. */
function severeThatDiffers(saw: Saw['severe'], now: Saw['severe']): readonly string[] {
  const only = (these: Saw['severe'], others: Saw['severe']) =>
    Object.entries(these).flatMap(([key, says]) => (Object.hasOwn(others, key) ? [] : [says]));
  return [
    ...only(now, saw).map((says) => `Not found when this was reviewed: ${says}`),
    ...only(saw, now).map((says) => `Found then and no longer: ${says}`),
  ];
}

function sentences(review: Review, decision: Decision, now: Saw, changed: readonly FactKey[]): string[] {
  const says: string[] = [];
  if (review.saw.candidate !== now.candidate) {
    says.push(`The arrangement was ${inWords(review.saw.candidate)} and is now ${inWords(now.candidate)}.`);
  }
  if (review.saw.basis !== now.basis) {
    says.push(`The code basis was ${review.saw.basis} and is now ${now.basis}.`);
  }
  for (const key of changed) {
    const before = review.saw.facts[key] as Value | null | undefined;
    const was = valueInSentence(key, before ?? undefined);
    says.push(
      `${fieldInfo(key).label}: was ${was}, is ${valueInSentence(key, valueIn(decision.slots, key))}.`,
    );
  }
  return says;
}

function inWords(id: string | null): string {
  if (id === null) return 'none';
  const candidate = candidateById(id);
  return candidate ? candidateInWords(candidate) : id;
}
