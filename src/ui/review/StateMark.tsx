import { type ReviewState, reviewStateWords } from '../../domain/review/words.ts';
import { StatusMark } from '../face/Mark.tsx';
import { reviewMarks } from '../parts/reviewMarks.ts';

/** Where a signature stands: a word and a shape. */
export function StateMark({ state }: { state: ReviewState }) {
  return <StatusMark status={reviewMarks[state]}>{reviewStateWords[state]}</StatusMark>;
}
