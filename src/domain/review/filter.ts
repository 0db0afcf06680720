import { counted } from '../text/counted.ts';
import type { Question } from './questions.ts';
import type { ReviewState } from './words.ts';
import { isApproval, reviewStateWords } from './words.ts';

/** What the register can be narrowed to, with the words of the list it is chosen from. */
export const registerStates = {
  all: 'Everything that needs a signature',
  waiting: 'Waits for a reviewer, or stale',
  open: reviewStateWords.open,
  stale: reviewStateWords.stale,
  approved: reviewStateWords.approved,
  approvedWithConditions: reviewStateWords.approvedWithConditions,
  refused: reviewStateWords.refused,
  passedToAuthority: reviewStateWords.passedToAuthority,
} as const;
export type RegisterState = keyof typeof registerStates;

export function isRegisterState(word: string): word is RegisterState {
  return Object.hasOwn(registerStates, word);
}

export function isListed(state: ReviewState, filter: RegisterState): boolean {
  if (filter === 'all') return true;
  return filter === 'waiting' ? state === 'open' || state === 'stale' : state === filter;
}

export interface RegisterFilter {
  readonly state: RegisterState;
  /** Id of a rule, or '' for every rule. */
  readonly ruleId: string;
  /** Id of a floor, or '' for every floor. */
  readonly floorId: string;
  /** Words of the question, or a mark. */
  readonly text: string;
}

export const everything: RegisterFilter = { state: 'all', ruleId: '', floorId: '', text: '' };

/** Names one question at one opening, or a question that no opening carries. */
export const askedKey = (questionId: string, openingId = ''): string => `${questionId} ${openingId}`;

/** What is listed now, by key: it stays listed while it is signed, or it would vanish under the reader's hands. */
export function keysOf(questions: readonly Question[]): ReadonlySet<string> {
  return new Set(
    questions.flatMap(({ id, at }) => [askedKey(id), ...at.map(({ opening }) => askedKey(id, opening.id))]),
  );
}

/** Questions as they are asked at the openings that pass; a question without any left is not listed. */
export function narrowed(
  questions: readonly Question[],
  filter: RegisterFilter,
  kept: ReadonlySet<string> = new Set(),
): readonly Question[] {
  const wanted = filter.text.trim().toLowerCase();
  return questions.flatMap((question): Question[] => {
    if (filter.ruleId !== '' && !question.ruleIds.includes(filter.ruleId)) return [];
    const named = wanted === '' || question.title.toLowerCase().includes(wanted);
    const at = question.at.filter(
      (one) =>
        (isListed(one.state, filter.state) || kept.has(askedKey(question.id, one.opening.id))) &&
        (filter.floorId === '' || one.opening.floorId === filter.floorId) &&
        (named ||
          one.opening.mark.toLowerCase().includes(wanted) ||
          one.sentence.toLowerCase().includes(wanted)),
    );
    if (at.length > 0) return [{ ...question, at }];
    const building =
      question.building.length > 0 &&
      filter.floorId === '' &&
      named &&
      (isListed(question.state, filter.state) || kept.has(askedKey(question.id)));
    return building ? [question] : [];
  });
}

/** "Answer for 5 of 6 openings, without 118". */
export function exceptionsInWords({ at }: Question, without: ReadonlySet<string>): string {
  if (at.length === 0) return 'Answer about the building';
  const left = at.filter(({ opening }) => without.has(opening.id)).map(({ opening }) => opening.mark);
  if (left.length === at.length) return 'Answer: no opening is ticked';
  if (at.length === 1) return `Answer for ${at[0]?.opening.mark}`;
  if (left.length === 0) return `Answer for all ${at.length} openings`;
  return `Answer for ${at.length - left.length} of ${at.length} openings, without ${left.join(', ')}`;
}

/** "22 questions at 38 openings: 18 must be signed before issue, 1 of them stale; 2 should be looked at." */
export function questionsInWords(questions: readonly Question[]): string {
  if (questions.length === 0) return 'The rules here asked for no name. That is not a review.';
  const openings = new Set(questions.flatMap(({ at }) => at.map(({ opening }) => opening.id))).size;
  // Counted as for the word Preliminary, which stands beside it.
  const open = questions.filter(({ state }) => !isApproval(state));
  const must = open.filter(({ grade }) => grade === 'must');
  const stale = must.filter(({ state }) => state === 'stale').length;
  return [
    `${counted(questions.length, 'question')} at ${counted(openings, 'opening')}: ${must.length} must be signed before issue`,
    stale > 0 ? `, ${stale} of them stale` : '',
    `; ${open.length - must.length} should be looked at.`,
  ].join('');
}
