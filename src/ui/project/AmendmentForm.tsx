import { linkTo } from '../../app/addresses.ts';
import { useId, useState } from 'react';
import { failModeWords } from '../../domain/words/arrangement.ts';
import { releases } from '../../domain/devices/candidates.ts';
import { deviceIds, devices } from '../../domain/devices/devices.ts';
import type { Amendment, Project } from '../../domain/model/project.ts';
import {
  type AmendmentDraft,
  amendmentEffects,
  amendmentTouches,
  readAmendment,
} from '../../domain/project/amendments.ts';
import { useDecisions } from '../useDecisions.ts';
import { AmendmentConditions } from './AmendmentConditions.tsx';
import { DraftNote } from '../parts/DraftNote.tsx';
import { focusFirst, useDraft } from '../parts/useDraft.ts';

interface Props {
  readonly project: Project;
  readonly id: string;
  /** The form of an amendment that is not in the project yet. */
  readonly isNew?: boolean;
  readonly start: AmendmentDraft;
  readonly button: string;
  readonly onKeep: (amendment: Amendment) => string | undefined;
  readonly onCancel: () => void;
}

export function AmendmentForm({ project, id, isNew = false, start, button, onKeep, onCancel }: Props) {
  const field = useId();
  const kept = useDraft(
    { place: `amendment/${isNew ? 'new' : id}`, label: 'Local amendment', href: linkTo('project') },
    start,
  );
  const draft = kept.value;
  const [tried, setTried] = useState(false);
  const read = readAmendment(id, draft);
  const problems = tried && !read.ok ? read.problems : {};
  const set = (change: Partial<AmendmentDraft>) => kept.type({ ...draft, ...change });
  const { decisions } = useDecisions();
  const error = (name: string) =>
    problems[name] !== undefined && (
      <p role="alert" className="field-error">
        {problems[name]}
      </p>
    );
  return (
    <form
      className="stack amendment-form"
      aria-label="Local amendment"
      onSubmit={(event) => {
        event.preventDefault();
        setTried(true);
        if (read.ok) kept.settle(onKeep(read.amendment));
      }}
    >
      <div className="field">
        <label htmlFor={`${field}says`}>What it requires, in one sentence</label>
        <textarea
          id={`${field}says`}
          className="input"
          rows={2}
          ref={focusFirst}
          value={draft.says}
          readOnly={kept.isReadOnly}
          aria-invalid={problems['says'] !== undefined}
          onChange={(event) => set({ says: event.target.value })}
        />
        {error('says')}
      </div>
      <div className="field">
        <label htmlFor={`${field}source`}>Ordinance or letter it comes from</label>
        <input
          id={`${field}source`}
          className="input"
          value={draft.source}
          readOnly={kept.isReadOnly}
          aria-invalid={problems['source'] !== undefined}
          onChange={(event) => set({ source: event.target.value })}
        />
        {error('source')}
      </div>
      <fieldset className="field">
        <legend>What it does</legend>
        <div className="choices">
          {Object.entries(amendmentEffects).map(([effect, label]) => (
            <label key={effect} className="choice">
              <input
                type="radio"
                name={`${field}effect`}
                checked={draft.effect === effect}
                onChange={() => set({ effect: effect as Amendment['effect'] })}
              />
              <span>{label}</span>
            </label>
          ))}
        </div>
      </fieldset>
      <AmendmentConditions when={draft.when} problems={problems} onChange={(when) => set({ when })} />
      <Several
        legend="Devices it applies to"
        options={deviceIds.map((device) => [device, devices[device].name])}
        chosen={draft.devices}
        onChange={(chosen) => set({ devices: chosen })}
      />
      <Several
        legend="Releases it applies to"
        options={Object.entries(releases)}
        chosen={draft.releases}
        onChange={(chosen) => set({ releases: chosen })}
      />
      <Several
        legend="Fail modes it applies to"
        options={Object.entries(failModeWords)}
        chosen={draft.failModes}
        onChange={(chosen) => set({ failModes: chosen })}
      />
      {error('devices')}
      <output className="remark">
        {read.ok
          ? amendmentTouches(project, read.amendment, decisions)
          : 'The number of openings it affects is shown here once the form is complete.'}
      </output>
      <DraftNote draft={kept} />
      <div className="row">
        <button type="submit" className="button button-main">
          {button}
        </button>
        <button
          type="button"
          className="button button-quiet"
          onClick={() => {
            kept.done();
            onCancel();
          }}
        >
          Cancel
        </button>
      </div>
    </form>
  );
}

/** Any number of a list; none means that it does not matter. */
function Several(props: {
  legend: string;
  options: readonly (readonly [id: string, name: string])[];
  chosen: readonly string[];
  onChange: (chosen: readonly string[]) => void;
}) {
  const { legend, options, chosen, onChange } = props;
  return (
    <details open={chosen.length > 0 || undefined}>
      <summary>
        {legend}: {chosen.length === 0 ? 'all' : `${chosen.length} of ${options.length}`}
      </summary>
      <fieldset className="field">
        <legend className="visually-hidden">{legend}</legend>
        <div className="choices choices-wide">
          {options.map(([id, name]) => (
            <label key={id} className="choice">
              <input
                type="checkbox"
                checked={chosen.includes(id)}
                onChange={(event) =>
                  onChange(event.target.checked ? [...chosen, id] : chosen.filter((one) => one !== id))
                }
              />
              <span>{name}</span>
            </label>
          ))}
        </div>
      </fieldset>
    </details>
  );
}
