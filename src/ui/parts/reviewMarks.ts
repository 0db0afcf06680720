import type { ReviewState } from '../../domain/review/words.ts';
import type { StatusWord } from '../../exporting/drawing/word-symbols.ts';

/** The mark beside the state of a review: only an approval that still holds is signed off. */
export const reviewMarks: Readonly<Record<ReviewState, StatusWord>> = {
  notNeeded: 'settled',
  open: 'needsSignOff',
  approved: 'signedOff',
  refused: 'needsSignOff',
  approvedWithConditions: 'signedOff',
  passedToAuthority: 'needsSignOff',
  stale: 'stale',
};
