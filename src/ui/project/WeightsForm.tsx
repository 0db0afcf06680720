import { linkTo } from '../../app/addresses.ts';
import { useId } from 'react';
import { scorePartWords } from '../../domain/words/ranking.ts';
import { defaultWeights, type Project, type ScorePart, scoreParts } from '../../domain/model/project.ts';
import {
  allZeroMeans,
  nearTieMeans,
  readWeight,
  scorePartMeans,
  weightShares,
} from '../../domain/project/weightsMean.ts';
import { withPreferred } from '../../domain/project/preferences.ts';
import { PreferredDevices } from './PreferredDevices.tsx';
import { useCommand } from './useCommand.ts';
import { DraftNote } from '../parts/DraftNote.tsx';
import { useDraft } from '../parts/useDraft.ts';

export function WeightsForm({ project }: { project: Project }) {
  const command = useCommand();
  const shares = weightShares(project.weights);
  const keep = (part: ScorePart, value: number) =>
    command(`Weight: ${scorePartWords[part]}`, [
      { kind: 'setWeights', value: { ...project.weights, [part]: value } },
    ]);
  const usual = scoreParts.every((part) => project.weights[part] === defaultWeights[part]);
  return (
    <div className="stack">
      <p className="note">{nearTieMeans}</p>
      {scoreParts.every((part) => project.weights[part] === 0) && <p className="remark">{allZeroMeans}</p>}
      <ul className="weights">
        {scoreParts.map((part) => (
          <Weight
            key={part}
            part={part}
            value={project.weights[part]}
            share={shares[part]}
            onKeep={(value) => keep(part, value)}
          />
        ))}
      </ul>
      <div className="row">
        <button
          type="button"
          className="button"
          disabled={usual}
          onClick={() =>
            command('Weights reset to default', [
              { kind: 'setWeights', value: withPreferred(defaultWeights, project.weights.preferred ?? {}) },
            ])
          }
        >
          Reset to default weights
        </button>
      </div>
      <PreferredDevices project={project} />
    </div>
  );
}

interface WeightProps {
  readonly part: ScorePart;
  readonly value: number;
  readonly share: number;
  readonly onKeep: (value: number) => string | undefined;
}

/** Slider and number move together; the step is kept once the hand lets go, so undo goes back one whole move. */
function Weight({ part, value, share, onKeep }: WeightProps) {
  const id = useId();
  const draft = useDraft(
    { place: `weight/${part}`, label: `Weight: ${scorePartWords[part]}`, href: linkTo('project') },
    String(value),
  );
  const keep = () => {
    if (!draft.isChanged) return;
    const read = readWeight(draft.value);
    draft.settle(read.ok ? onKeep(read.value) : read.says);
  };
  return (
    <li className="weight">
      <div>
        <label htmlFor={id} className="field-label">
          {scorePartWords[part]}
        </label>
        <p id={`${id}means`} className="field-help">
          {scorePartMeans[part]}
        </p>
      </div>
      <input
        type="range"
        className="slider"
        min={0}
        max={100}
        aria-label={`${scorePartWords[part]}, slider`}
        disabled={draft.isReadOnly}
        value={Number.isFinite(Number(draft.value)) ? Number(draft.value) : value}
        onChange={(event) => draft.type(event.target.value)}
        onPointerUp={keep}
        onKeyUp={keep}
        onBlur={keep}
      />
      <span className="with-unit">
        <input
          id={id}
          className="input weight-number"
          inputMode="numeric"
          aria-describedby={`${id}means ${id}share`}
          aria-invalid={draft.problem !== ''}
          value={draft.value}
          readOnly={draft.isReadOnly}
          onChange={(event) => draft.type(event.target.value)}
          onBlur={keep}
          onKeyDown={(event) => {
            if (event.key === 'Enter') keep();
          }}
        />
        <span id={`${id}share`} className="dim">
          {share} % of the whole
        </span>
      </span>
      <DraftNote draft={draft} onKeep={keep} />
    </li>
  );
}
