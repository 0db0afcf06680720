import { linkTo } from '../../app/addresses.ts';
import { deskOf } from '../../app/verdictDesk.ts';
import { type SubmitEvent, useState } from 'react';
import type { Verdict } from '../../domain/model/verdict.ts';
import { useApp, useApplication } from '../context.ts';
import { DraftNote } from '../parts/DraftNote.tsx';
import { useVerdictDraft } from './useVerdictDraft.ts';
import { VerdictFields } from './VerdictFields.tsx';

interface Props {
  readonly target: Verdict;
  readonly onWritten: (says: string) => void;
  readonly onCancel: () => void;
}

/** Takes a verdict back: it stays on file, with the reason beside it. */
export function WithdrawForm({ target, onWritten, onCancel }: Props) {
  const app = useApplication();
  const { signer } = app;
  const desk = deskOf(app);
  const project = useApp((state) => state.document.project);
  const { draft, kept, problems, form, day, change, check } = useVerdictDraft(
    { place: `withdraw/${target.id}`, label: 'Withdrawal of a verdict', href: linkTo('review') },
    { verdict: 'withdrawn' },
  );
  const [told, setTold] = useState('');
  const send = async (event: SubmitEvent) => {
    event.preventDefault();
    if (!check({ project, targets: [], questions: [], ...day() })) return;
    const written = await desk.withdraw(target, draft, day(), signer.current());
    if (!written.ok) return setTold(written.says);
    kept.done();
    onWritten('Withdrawn. The verdict stays on file, with the reason beside it.');
  };
  return (
    <form
      ref={form}
      className="stack"
      aria-label="Withdraw"
      onSubmit={(event) => void send(event)}
      noValidate
    >
      <VerdictFields
        draft={draft}
        problems={problems}
        onChange={change}
        readOnly={kept.isReadOnly}
        withdrawing
      />
      <DraftNote draft={kept} />
      <p role="alert" className="field-error">
        {told}
      </p>
      <div className="row">
        <button type="submit" className="button button-main">
          Withdraw this verdict
        </button>
        <button type="button" className="button button-quiet" onClick={onCancel}>
          Cancel
        </button>
      </div>
    </form>
  );
}
