import { linkTo } from '../../app/addresses.ts';
import { useRef, useState } from 'react';
import type { Decision } from '../../domain/decide/decision.ts';
import type { Opening } from '../../domain/model/project.ts';
import { reviewState } from '../../domain/review/status.ts';
import { marksOnFile } from '../../exporting/sheets/markOnFile.ts';
import { useApp } from '../context.ts';
import { useHasDraft } from '../parts/useDraft.ts';
import { ReviewMark } from './ReviewMark.tsx';
import { VerdictForm } from './VerdictForm.tsx';
import { WithdrawForm } from './WithdrawForm.tsx';
import './review.css';

interface Props {
  readonly opening: Opening;
  readonly decision: Decision;
}

/** Everything on file at one opening, and the form that adds to it. Whoever reads must see first what was decided before. */
export function ReviewForm({ opening, decision }: Props) {
  const project = useApp((state) => state.document.project);
  const place = `review/${opening.id}`;
  const [again, setAgain] = useState(useHasDraft(place));
  const [withdrawing, setWithdrawing] = useState('');
  const [told, setTold] = useState('');
  const result = useRef<HTMLDivElement>(null);
  const onFile = marksOnFile(reviewState(project, opening, decision));
  const written = (says: string) => {
    setAgain(false);
    setWithdrawing('');
    setTold(says);
    // The button that was pressed is gone; the keyboard goes on from what took its place.
    result.current?.focus();
  };
  return (
    <div className="stack review-form">
      <div ref={result} tabIndex={-1} className="stack stack-tight">
        {onFile.map((mark) => {
          const verdict = project.verdicts[mark.id];
          return (
            <div key={mark.id} className="stack stack-tight">
              <ReviewMark mark={mark} />
              {mark.canWithdraw && withdrawing !== mark.id && (
                <button
                  type="button"
                  className="button button-quiet button-small self-start"
                  onClick={() => setWithdrawing(mark.id)}
                >
                  Withdraw, with a reason
                </button>
              )}
              {verdict && withdrawing === mark.id && (
                <WithdrawForm target={verdict} onWritten={written} onCancel={() => setWithdrawing('')} />
              )}
            </div>
          );
        })}
        <p role="status" className="note">
          {told}
        </p>
      </div>
      {onFile.length > 0 && !again ? (
        <button type="button" className="button self-start" onClick={() => setAgain(true)}>
          Add a verdict
        </button>
      ) : (
        <VerdictForm
          name={`Review of ${opening.mark}`}
          where={{
            place,
            label: `Review of ${opening.mark}`,
            href: linkTo('opening', opening.id),
          }}
          targets={[{ opening, decision }]}
          questions={[]}
          onWritten={written}
        />
      )}
    </div>
  );
}
