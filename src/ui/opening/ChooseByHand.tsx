import { linkTo } from '../../app/addresses.ts';
import { useId, useState } from 'react';
import type { Decision } from '../../domain/decide/decision.ts';
import { handChoices } from '../../domain/words/byHand.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import { handChoiceDoubt } from '../../domain/project/doubts.ts';
import { useApplication, useStore } from '../context.ts';
import { DraftNote } from '../parts/DraftNote.tsx';
import { useDraft } from '../parts/useDraft.ts';

interface Props {
  readonly project: Project;
  readonly opening: Opening;
  readonly decision: Decision;
}

const nothingChosen: { readonly candidate: string; readonly reason: string } = { candidate: '', reason: '' };

/** A person may choose otherwise, with a reason; a reviewer is then asked to sign. */
export function ChooseByHand({ opening, decision }: Props) {
  const store = useStore();
  const app = useApplication();
  const ids = useId();
  const draft = useDraft(
    {
      place: `hand/${opening.id}`,
      label: `${opening.mark}, choice by hand`,
      href: linkTo('opening', opening.id),
    },
    nothingChosen,
  );
  const { candidate, reason } = draft.value;
  const [asked, setOpen] = useState(false);
  const open = asked || draft.isChanged;
  const type = (next: typeof nothingChosen) => {
    setOpen(true);
    draft.type(next);
  };

  const set = (value: Opening['override'], label: string) =>
    store.getState().dispatch(`${opening.mark}: ${label}`, [{ kind: 'setOverride', id: opening.id, value }]);
  const keep = () => {
    if (candidate === '') return draft.settle('Pick what is to be used instead.');
    if (reason.trim() === '') return draft.settle('Say why; the reviewer will read it.');
    const by = app.preferences.get('yourName');
    const result = set({ candidate, reason: reason.trim(), by, at: app.clock() }, 'chosen by hand');
    draft.settle(result.ok ? undefined : result.says);
    if (result.ok) setOpen(false);
  };

  if (opening.override) {
    return (
      <p className="note">
        {handChoiceDoubt(opening) ??
          `Chosen by hand${opening.override.by ? ` by ${opening.override.by}` : ''}: ${opening.override.reason}`}{' '}
        <button
          type="button"
          className="button button-quiet button-small"
          onClick={() => set(null, 'back to the recommendation')}
        >
          Back to the recommendation
        </button>
      </p>
    );
  }
  if (!open) {
    return (
      <button
        type="button"
        className="button button-quiet button-small self-start"
        onClick={() => setOpen(true)}
      >
        Choose by hand
      </button>
    );
  }
  const choices = handChoices(decision);
  return (
    <form
      className="section stack"
      onSubmit={(event) => {
        event.preventDefault();
        keep();
      }}
    >
      <h3>Choose by hand</h3>
      <label className="field" htmlFor={`${ids}what`}>
        <span className="field-label">What to use instead</span>
        <select
          id={`${ids}what`}
          className="input"
          value={candidate}
          onChange={(event) => type({ candidate: event.target.value, reason })}
        >
          <option value="">Pick an arrangement</option>
          {choices.map((choice) => (
            <option key={choice.id} value={choice.id}>
              {choice.name}
              {choice.forbiddenBy ? ` (ruled out by ${choice.forbiddenBy})` : ''}
            </option>
          ))}
        </select>
      </label>
      <label className="field" htmlFor={`${ids}why`}>
        <span className="field-label">Reason</span>
        <textarea
          id={`${ids}why`}
          className="input notes"
          value={reason}
          readOnly={draft.isReadOnly}
          onChange={(event) => type({ candidate, reason: event.target.value })}
        />
      </label>
      <DraftNote draft={draft} />
      <div className="row">
        <button type="submit" className="button button-main">
          Use it
        </button>
        <button
          type="button"
          className="button button-quiet"
          onClick={() => {
            draft.done();
            setOpen(false);
          }}
        >
          Cancel
        </button>
      </div>
    </form>
  );
}
