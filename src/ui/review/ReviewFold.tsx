import type { Decision } from '../../domain/decide/decision.ts';
import type { Opening } from '../../domain/model/project.ts';
import { reviewState, reviewStateWords } from '../../domain/schedules/review.ts';
import { StatusMark } from '../face/Mark.tsx';
import { reviewMarks } from '../parts/reviewMarks.ts';
import { Opened } from './Opened.tsx';
import { ReviewForm } from './ReviewForm.tsx';

/** The review of one opening, beside its decision: its state in one line, the form when it is asked for. */
export function ReviewFold({ opening, decision }: { opening: Opening; decision: Decision }) {
  const { state } = reviewState(opening, decision);
  return (
    <section aria-label="Review">
      <Opened
        summary={
          <>
            Review{' '}
            {state === 'notNeeded' ? (
              <span className="note">{reviewStateWords[state]}</span>
            ) : (
              <StatusMark status={reviewMarks[state]}>{reviewStateWords[state]}</StatusMark>
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
