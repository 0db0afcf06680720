import { type SubmitEvent, useId, useRef, useState } from 'react';
import { dayOf } from '../../app/today.ts';
import type { Decision } from '../../domain/decide/decision.ts';
import type { Opening } from '../../domain/model/project.ts';
import { reviewVerdicts } from '../../domain/model/project.ts';
import { reviewState } from '../../domain/schedules/review.ts';
import {
  needsReason,
  type ReviewDraft,
  reviewFrom,
  reviewLabel,
  reviewProblems,
  type ReviewProblems,
  verdictWords,
} from '../../domain/schedules/reviewDraft.ts';
import { markOnFile } from '../../exporting/sheets/markOnFile.ts';
import { useApplication, useStore } from '../context.ts';
import { DraftNote } from '../parts/DraftNote.tsx';
import { useDraft, useHasDraft } from '../parts/useDraft.ts';
import { ReviewMark } from './ReviewMark.tsx';
import './review.css';

interface Props {
  readonly opening: Opening;
  readonly decision: Decision;
}

/** The mark on file, and the form that sets one. Whoever reads must see first what was decided before. */
export function ReviewForm({ opening, decision }: Props) {
  const store = useStore();
  const [again, setAgain] = useState(useHasDraft(`review/${opening.id}`));
  const [told, setTold] = useState('');
  const result = useRef<HTMLDivElement>(null);
  const onFile = markOnFile(reviewState(opening, decision));
  const put = (review: Opening['review']) => {
    const dispatched = store
      .getState()
      .dispatch(reviewLabel(opening.mark, review), [{ kind: 'setReview', id: opening.id, value: review }]);
    if (!dispatched.ok) {
      setTold(dispatched.says);
      return dispatched.says;
    }
    setAgain(false);
    setTold(review ? 'The review is on file.' : 'The review was removed. Undo brings it back.');
    // The button that was pressed is gone; the keyboard goes on from what took its place.
    result.current?.focus();
    return undefined;
  };
  return (
    <div className="stack review-form">
      <div ref={result} tabIndex={-1} className="stack stack-tight">
        {onFile && <ReviewMark mark={onFile} />}
        <p role="status" className="note">
          {told}
        </p>
      </div>
      {onFile && !again ? (
        <div className="row">
          <button type="button" className="button" onClick={() => setAgain(true)}>
            Review again
          </button>
          <button type="button" className="button button-remove" onClick={() => put(null)}>
            Remove this review
          </button>
        </div>
      ) : (
        <Draft opening={opening} decision={decision} onSet={put} focus={again} />
      )}
    </div>
  );
}

interface DraftProps extends Props {
  readonly onSet: (review: Opening['review']) => string | undefined;
  readonly focus: boolean;
}

function Draft({ opening, decision, onSet, focus }: DraftProps) {
  const { clock, preferences } = useApplication();
  const id = useId();
  const form = useRef<HTMLFormElement>(null);
  const [start] = useState<ReviewDraft>(() => ({
    verdict: '',
    by: preferences.get('yourName'),
    on: dayOf(clock()),
    reason: '',
  }));
  const kept = useDraft(
    {
      place: `review/${opening.id}`,
      label: `Review of ${opening.mark}`,
      href: `#/opening/${encodeURIComponent(opening.id)}`,
    },
    start,
  );
  const draft = kept.value;
  const [problems, setProblems] = useState<ReviewProblems>({});
  const change = (part: Partial<ReviewDraft>) => {
    kept.type({ ...draft, ...part });
    setProblems({});
  };
  const send = (event: SubmitEvent) => {
    event.preventDefault();
    const found = reviewProblems(draft, decision);
    const review = reviewFrom(draft, decision);
    if (review) {
      if (onSet(review) === undefined) kept.done();
      return;
    }
    setProblems(found);
    const first = Object.keys(found)[0];
    form.current?.querySelector<HTMLElement>(`[name="${id}-${first}"]`)?.focus();
  };
  const named = (part: keyof ReviewDraft) => ({
    name: `${id}-${part}`,
    'aria-invalid': problems[part] !== undefined,
    'aria-describedby': problems[part] === undefined ? undefined : `${id}-${part}-problem`,
  });
  return (
    <form ref={form} className="stack" aria-label={`Review of ${opening.mark}`} onSubmit={send} noValidate>
      <fieldset className="field">
        <legend>Verdict</legend>
        <div className="choices">
          {reviewVerdicts.map((verdict, index) => (
            <label key={verdict} className="choice">
              <input
                type="radio"
                {...named('verdict')}
                checked={draft.verdict === verdict}
                // The form was asked for by a button just now; the keyboard goes on here.
                // oxlint-disable-next-line jsx-a11y/no-autofocus
                autoFocus={focus && index === 0}
                onChange={() => change({ verdict })}
              />
              {verdictWords[verdict]}
            </label>
          ))}
        </div>
        <Problem id={`${id}-verdict-problem`} says={problems.verdict} />
      </fieldset>
      <div className="review-who">
        <label className="field">
          <span className="field-label">By (name)</span>
          <input
            className="input"
            {...named('by')}
            autoComplete="name"
            value={draft.by}
            readOnly={kept.isReadOnly}
            onChange={(event) => change({ by: event.target.value })}
          />
          <Problem id={`${id}-by-problem`} says={problems.by} />
        </label>
        <label className="field">
          <span className="field-label">On</span>
          <input
            className="input"
            type="date"
            {...named('on')}
            value={draft.on}
            readOnly={kept.isReadOnly}
            onChange={(event) => change({ on: event.target.value })}
          />
          <Problem id={`${id}-on-problem`} says={problems.on} />
        </label>
      </div>
      <label className="field">
        <span className="field-label">
          {needsReason(draft.verdict, decision) ? 'Reason' : 'Reason (optional)'}
        </span>
        <textarea
          className="input"
          rows={2}
          {...named('reason')}
          value={draft.reason}
          readOnly={kept.isReadOnly}
          onChange={(event) => change({ reason: event.target.value })}
        />
        <Problem id={`${id}-reason-problem`} says={problems.reason} />
      </label>
      <DraftNote draft={kept} />
      <button type="submit" className="button button-main">
        File the review
      </button>
    </form>
  );
}

function Problem({ id, says }: { id: string; says: string | undefined }) {
  if (says === undefined) return null;
  return (
    <span id={id} className="field-error">
      {says}
    </span>
  );
}
