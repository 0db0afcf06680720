import { type ReactNode, useId, useState } from 'react';
import { type Project, securityLevels, type Space } from '../../domain/model/project.ts';
import { kindWords } from '../../domain/building/sentences.ts';
import { floorsInOrder, securityLevelWords } from '../../domain/project/places.ts';
import {
  loadOfDraft,
  publicWayChoices,
  type SpaceDraft,
  useChoices,
} from '../../domain/project/spaceDraft.ts';
import { areaAlso } from '../../domain/units/area.ts';
import { ReasonLines } from '../parts/ReasonLines.tsx';
import { DraftNote } from '../parts/DraftNote.tsx';
import { type DraftPlace, focusFirst, useDraft } from '../parts/useDraft.ts';

interface Props {
  readonly project: Project;
  readonly at: DraftPlace;
  readonly start: SpaceDraft;
  readonly button: string;
  /** Keeps the space; what is refused comes back with its field. */
  readonly onKeep: (draft: SpaceDraft) => { readonly field: string; readonly says: string } | undefined;
  readonly onCancel: () => void;
}

export function SpaceForm({ project, at, start, button, onKeep, onCancel }: Props) {
  const id = useId();
  const kept = useDraft(at, start);
  const { value: draft, isReadOnly } = kept;
  const [problem, setProblem] = useState({ field: '', says: '' });
  const set = (change: Partial<SpaceDraft>) => kept.type({ ...draft, ...change });
  const load = loadOfDraft(project, draft);
  const error = (field: string) =>
    problem.field === field && (
      <p role="alert" className="field-error">
        {problem.says}
      </p>
    );
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        const refused = onKeep(draft);
        if (refused) setProblem(refused);
        else kept.done();
      }}
    >
      <div className="project-fields">
        <div className="field">
          <label htmlFor={`${id}name`}>Name</label>
          <input
            id={`${id}name`}
            className="input"
            ref={focusFirst}
            value={draft.name}
            readOnly={isReadOnly}
            aria-invalid={problem.field === 'name'}
            onChange={(event) => set({ name: event.target.value })}
          />
          {error('name')}
        </div>
        <Pick
          label="Floor"
          value={draft.floorId}
          onPick={(floorId) => set({ floorId })}
          none="Not stated"
          options={floorsInOrder(project).map((floor) => [floor.id, floor.name])}
        />
        <Pick
          label="Kind"
          value={draft.kind}
          onPick={(kind) => set({ kind: kind as Space['kind'] })}
          options={Object.entries(kindWords)}
        />
        {draft.kind === 'outside' && (
          <Pick
            label="Where leaving ends"
            value={draft.publicWay}
            onPick={(publicWay) => set({ publicWay })}
            none="Not stated"
            options={publicWayChoices}
          />
        )}
        <Pick
          label="Security level"
          value={draft.securityLevel}
          onPick={(securityLevel) => set({ securityLevel })}
          none="Not known"
          options={securityLevels.map((level) => [level, securityLevelWords[level]])}
        />
        <Pick
          label="Use of the floor"
          value={draft.use}
          onPick={(use) => set({ use })}
          none="Not known"
          options={useChoices()}
        />
        <Amount
          label="Floor area"
          unit="ft²"
          also={areaAlso(draft.area)}
          help="Write 1120, 1120 ft² or 104 m²."
          value={draft.area}
          isReadOnly={isReadOnly}
          onType={(area) => set({ area })}
          error={error('area')}
        />
        <Amount
          label="Common path"
          unit="ft"
          help="The longest travel before a person has a choice of two exits."
          value={draft.commonPath}
          isReadOnly={isReadOnly}
          onType={(commonPath) => set({ commonPath })}
          error={error('commonPath')}
        />
        <Amount
          label="Occupant load"
          unit="people"
          help="Only where the drawings or the authority give one. Where use and area come to another load, the larger governs."
          value={draft.occupantLoad}
          isReadOnly={isReadOnly}
          onType={(occupantLoad) => set({ occupantLoad })}
          error={error('occupantLoad')}
        />
      </div>
      <div className="stack stack-tight">
        <p role="status">{load === undefined ? '' : `Load: ${load.says}`}</p>
        <ReasonLines reasons={load?.reasons ?? []} />
      </div>
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

function Amount(props: {
  label: string;
  unit: string;
  also?: string;
  help: string;
  value: string;
  isReadOnly: boolean;
  onType: (text: string) => void;
  error: ReactNode;
}) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{props.label}</label>
      <span className="with-unit">
        <input
          id={id}
          className="input"
          autoComplete="off"
          placeholder="Not known"
          value={props.value}
          readOnly={props.isReadOnly}
          aria-invalid={props.error !== false}
          aria-describedby={`${id}about`}
          onChange={(event) => props.onType(event.target.value)}
        />
        <span className="dim">{props.unit}</span>
        <span className="note also">{props.also}</span>
      </span>
      <div id={`${id}about`}>
        <p className="field-help">{props.help}</p>
        {props.error}
      </div>
    </div>
  );
}

export function Pick(props: {
  label: string;
  value: string;
  onPick: (value: string) => void;
  none?: string;
  options: readonly (readonly [value: string, label: string])[];
}) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{props.label}</label>
      <select
        id={id}
        className="input"
        value={props.value}
        onChange={(event) => props.onPick(event.target.value)}
      >
        {props.none !== undefined && <option value="">{props.none}</option>}
        {props.options.map(([value, label]) => (
          <option key={value} value={value}>
            {label}
          </option>
        ))}
      </select>
    </div>
  );
}
