import { useState } from 'react';
import type { Opening, Project } from '../../domain/model/project.ts';
import {
  floorOfMark,
  longestRun,
  marksAfter,
  nextDoorWords,
  runInWords,
  runLike,
  runToLookAt,
} from '../../domain/survey/nextDoor.ts';
import { emptyBeside, sameAsInWords } from '../../domain/survey/takeOver.ts';
import { useApplication } from '../context.ts';

interface Props {
  readonly project: Project;
  readonly opening: Opening;
}

/** On to the next door: new, the same as this one, or a whole run of them. One press each. */
export function NextDoor({ project, opening }: Props) {
  const app = useApplication();
  const [count, setCount] = useState(10);
  const [problem, setProblem] = useState('');
  const used = Object.values(project.openings).map((one) => one.mark);
  const [next = ''] = marksAfter(used, opening.mark, 1);
  const run = marksAfter(used, opening.mark, count);
  const add = (openings: readonly Opening[], label: string) => {
    const placed = openings.map((one) => ({
      ...one,
      // The floor one stands on holds; a mark that speaks for another is asked about at the new door.
      floorId: one.floorId ?? floorOfMark(project, one.mark) ?? null,
    }));
    const result = app.store.getState().dispatch(
      label,
      placed.map((one) => ({ kind: 'putOpening', id: one.id, value: one })),
    );
    if (!result.ok) return setProblem(result.says);
    app.store.getState().select(placed[0]?.id ?? null);
  };
  return (
    <section className="section stack stack-tight" aria-label="Next door">
      <div className="answer-list">
        <button
          type="button"
          onClick={() => add([emptyBeside(app.newId(), next, opening)], `New opening ${next}`)}
        >
          {nextDoorWords.fresh(next)}
        </button>
        <button
          type="button"
          onClick={() =>
            add(runLike(opening, [next], app.newId), `New opening ${runInWords([next], opening.mark)}`)
          }
        >
          {nextDoorWords.same(next, opening.mark)}
        </button>
      </div>
      <p className="note">{sameAsInWords}</p>
      <details>
        <summary>{nextDoorWords.several}</summary>
        <div className="stack stack-tight">
          <div className="row">
            <button
              type="button"
              className="button step-button"
              aria-label="Fewer"
              onClick={() => setCount(Math.max(2, count - 1))}
            >
              −
            </button>
            <output aria-label="How many">{count}</output>
            <button
              type="button"
              className="button step-button"
              aria-label="More doors"
              onClick={() => setCount(Math.min(longestRun, count + 1))}
            >
              +
            </button>
          </div>
          <button
            type="button"
            className="button button-main self-start"
            onClick={() =>
              add(runLike(opening, run, app.newId), `New openings ${runInWords(run, opening.mark)}`)
            }
          >
            {runInWords(run, opening.mark)}
          </button>
          <p className="note">{runToLookAt(count)}</p>
        </div>
      </details>
      {problem !== '' && (
        <p role="alert" className="field-error">
          {problem}
        </p>
      )}
    </section>
  );
}
