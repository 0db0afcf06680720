import { deskOf } from '../../app/verdictDesk.ts';
import { type SubmitEvent, useState } from 'react';
import { type Target, verdictWarnings } from '../../domain/review/draft.ts';
import { useApp, useApplication } from '../context.ts';
import { useVerdictDraft } from './useVerdictDraft.ts';
import { VerdictFields } from './VerdictFields.tsx';
import { DraftNote } from '../parts/DraftNote.tsx';
import type { DraftPlace } from '../parts/useDraft.ts';
import './review.css';

interface Props {
  /** What is signed, for whoever hears the form read out, and where what is typed is kept. */
  readonly name: string;
  readonly where: DraftPlace;
  readonly targets: readonly Target[];
  /** Empty for everything that is asked at these openings. */
  readonly questions: readonly string[];
  readonly building?: readonly string[];
  readonly onWritten: (says: string) => void;
}

/** A verdict on one opening, or on one question at many. */
export function VerdictForm({ name, where, targets, questions, building = [], onWritten }: Props) {
  const app = useApplication();
  const { signer } = app;
  const desk = deskOf(app);
  const project = useApp((state) => state.document.project);
  const { draft, kept, problems, form, day, change, check } = useVerdictDraft(where);
  const [told, setTold] = useState('');
  const asked = { targets, questions, building, ...day() };
  const warnings = verdictWarnings(draft, { ...asked, project });
  const send = async (event: SubmitEvent) => {
    event.preventDefault();
    if (!check({ ...asked, project })) return;
    const written = await desk.write(draft, asked, signer.current());
    if (!written.ok) return setTold(written.says);
    kept.done();
    onWritten('The verdict is on file.');
  };
  return (
    <form ref={form} className="stack" aria-label={name} onSubmit={(event) => void send(event)} noValidate>
      <VerdictFields draft={draft} problems={problems} onChange={change} readOnly={kept.isReadOnly} />
      <DraftNote draft={kept} />
      {warnings.map((warning) => (
        <p key={warning} className="remark">
          {warning}
        </p>
      ))}
      <p role="alert" className="field-error">
        {told}
      </p>
      <button type="submit" className="button button-main" disabled={targets.length + building.length === 0}>
        File the verdict
      </button>
    </form>
  );
}
