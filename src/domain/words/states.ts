import { isForbiddenByHand } from '../decide/byHand.ts';
import type { Decision, DecisionState } from '../decide/decision.ts';

export const stateWords: Record<DecisionState, { word: string; means: string }> = {
  settled: {
    word: 'Settled',
    means:
      'No missing information can change the arrangement, the signatures or the required items. This is not a code review.',
  },
  open: {
    word: 'Provisional',
    means:
      'Something not yet known could still change the arrangement, what is signed for or what is required.',
  },
  severe: {
    word: 'Severe finding',
    means:
      'As it stands, someone is locked in or a fire door fails, here or in the building around it. Not settled until that is fixed.',
  },
  refused: {
    word: 'Refused',
    means: 'The survey contradicts itself on a life-safety point; correct it first.',
  },
  referred: { word: 'To a reviewer', means: 'Not decided here; a reviewer decides this opening.' },
  left: {
    word: 'Left as it is',
    means: 'Nothing is wanted here and nothing is bought. What lets people out is still asked and reported.',
  },
  none: {
    word: 'No workable hardware',
    means: 'The rules leave no arrangement for this opening as it stands.',
  },
};

/** While the building is walked again after an edit: by itself the opening is settled, and nobody is told so yet. */
export type ShownState = DecisionState | 'checking' | 'forbidden';
export const shownStateWords: Record<ShownState, { word: string; means: string }> = {
  ...stateWords,
  forbidden: {
    word: 'Refused by rule, chosen by a person',
    means:
      'A rule forbids what a person chose here. It must be signed for, it never counts as settled or ordered, and no acceptance test is written for it.',
  },
  checking: {
    word: 'Checking the building',
    means:
      'Decided with the last answer. The building is being checked with it; until then nothing is settled.',
  },
};

export function shownState(
  decision: Pick<Decision, 'state' | 'overridden' | 'rejected'>,
  checking = false,
): ShownState {
  const { state } = decision;
  if (state === 'open' && isForbiddenByHand(decision)) return 'forbidden';
  return checking && state === 'settled' ? 'checking' : state;
}

/** As paper and tables say it; what is being checked is not printed. */
export const stateInWords = (decision: Pick<Decision, 'state' | 'overridden' | 'rejected'>) =>
  shownStateWords[shownState(decision)];

/** In place of a recommendation, while nobody has said what door it is. */
export const nothingNamedYet = 'Nothing is recommended before door type, leaf and latch are known.';
