import type { Decision } from '../../domain/decide/decision.ts';
import type { Opening } from '../../domain/model/project.ts';
import { reviewState, reviewStateWords } from '../../domain/schedules/review.ts';
import { StatusMark } from '../face/Mark.tsx';
import { Opened } from './Opened.tsx';
import { ReviewForm } from './ReviewForm.tsx';

/** The review of one opening, beside its decision: its state in one line, the form when it is asked for. */
export function ReviewFold({ opening, decision }: { opening: Opening; decision: Decision }) {
  const { state, review } = reviewState(opening, decision);
  const status = state === 'stale' ? 'stale' : review ? 'signedOff' : 'needsSignOff';
  return (
    <section aria-label="Review">
      <Opened
        summary={
          <>
            Review{' '}
            {state === 'notNeeded' ? (
              <span className="note">{reviewStateWords[state]}</span>
            ) : (
              <StatusMark status={status}>{reviewStateWords[state]}</StatusMark>
            )}
          </>
        }
        atFirst={state === 'stale'}
      >
        <ReviewForm opening={opening} decision={decision} />
      </Opened>
    </section>
  );
}
