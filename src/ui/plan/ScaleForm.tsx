import { useId, useState } from 'react';
import type { FloorPlan, Spot } from '../../domain/model/floorPlan.ts';
import { floorPlanWords, scaled } from '../../domain/project/floorPlans.ts';
import { useCommand } from '../project/useCommand.ts';

interface Props {
  readonly plan: FloorPlan;
  readonly points: readonly Spot[];
  readonly onDone: () => void;
}

/** What to tap next, and the length between the two points once they are there. */
export function ScaleForm({ plan, points, onDone }: Props) {
  const command = useCommand();
  const id = useId();
  const [text, setText] = useState('');
  const [problem, setProblem] = useState('');
  const [first, second] = points;
  if (!first || !second) {
    return (
      <p role="status" className="remark">
        {first ? floorPlanWords.secondPoint : floorPlanWords.firstPoint}
      </p>
    );
  }
  const keep = () => {
    const read = scaled(plan, first, second, text);
    const says = read.ok ? command('Scale of the plan', [read.edit]) : read.says;
    if (says === undefined) onDone();
    else setProblem(says);
  };
  return (
    <form
      className="row"
      onSubmit={(event) => {
        event.preventDefault();
        keep();
      }}
    >
      <div className="field">
        <label htmlFor={id}>{floorPlanWords.length}</label>
        <input
          id={id}
          className="input"
          autoComplete="off"
          autoFocus
          value={text}
          aria-describedby={`${id}help`}
          aria-invalid={problem !== ''}
          onChange={(event) => setText(event.target.value)}
        />
        <p id={`${id}help`} className="field-help">
          {floorPlanWords.lengthHelp}
        </p>
        {problem !== '' && (
          <p role="alert" className="field-error">
            {problem}
          </p>
        )}
      </div>
      <button type="submit" className="button button-main">
        {floorPlanWords.keepScale}
      </button>
    </form>
  );
}
