import type { Decision } from '../../domain/decide/decision.ts';
import type { Opening } from '../../domain/model/project.ts';
import { reviewState } from '../../domain/review/status.ts';
import { reviewStateWords } from '../../domain/review/words.ts';
import { useApp } from '../context.ts';
import { Opened } from './Opened.tsx';
import { ReviewForm } from './ReviewForm.tsx';
import { StateMark } from './StateMark.tsx';

/** The review of one opening, beside its decision: its state in one line, the form when it is asked for. */
export function ReviewFold({ opening, decision }: { opening: Opening; decision: Decision }) {
  const project = useApp((state) => state.document.project);
  const { state } = reviewState(project, opening, decision);
  return (
    <section aria-label="Review">
      <Opened
        summary={
          <>
            Review{' '}
            {state === 'notNeeded' ? (
              <span className="note">{reviewStateWords[state]}</span>
            ) : (
              <StateMark state={state} />
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
