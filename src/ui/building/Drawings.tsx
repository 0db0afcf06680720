import { useEffect, useMemo, useSyncExternalStore } from 'react';
import type { BuildingState } from '../../domain/building/building.ts';
import type { Plan } from '../../domain/building/plan.ts';
import type { ConditionId } from '../../domain/simulate/conditions.ts';
import { StatusMark } from '../face/Mark.tsx';
import { FloorDrawing } from './FloorDrawing.tsx';
import type { FloorGraph } from './floors.ts';
import { FloorTables } from './FloorTables.tsx';
import { LayoutRun } from './layout.ts';

/** The floors, placed one after another; what is placed is shown at once, and a person may stop it. */
export function Drawings(props: {
  plan: Plan;
  floors: readonly FloorGraph[];
  state: BuildingState;
  condition: ConditionId;
  marked: ReadonlySet<string>;
}) {
  const { plan, floors, condition, marked } = props;
  // Only what joins what and the names move a box; a changed lock must not lay the building out again.
  const shape = JSON.stringify(
    floors.map((floor) => [
      floor.id,
      floor.spaces.map((index) => plan.spaces[index]?.name),
      floor.edges.map((index) => [
        plan.edges[index]?.from,
        plan.edges[index]?.to,
        plan.edges[index]?.opening.mark,
      ]),
    ]),
  );
  // oxlint-disable-next-line react/exhaustive-deps -- the shape stands for plan and floors
  const run = useMemo(() => new LayoutRun(plan, floors), [shape]);
  const { state: progress, placed, total } = useSyncExternalStore(run.subscribe, run.snapshot);
  useEffect(() => {
    run.start();
    return () => run.stop();
  }, [run]);
  return (
    <div className="stack">
      <div role="status" className="row">
        {progress === 'running' && (
          <>
            <progress max={total} value={placed.length} aria-label="Floors drawn" />
            <span>
              Drawing floor {Math.min(placed.length + 1, total)} of {total}…
            </span>
            <button type="button" className="button button-small" onClick={() => run.stop()}>
              Stop
            </button>
          </>
        )}
        {(progress === 'stopped' || progress === 'failed') && (
          <>
            <StatusMark status="caution">{progress === 'stopped' ? 'Stopped' : 'Not drawn'}</StatusMark>
            <span>The tables below say the same.</span>
            <button type="button" className="button button-small" onClick={() => run.start()}>
              Draw again
            </button>
          </>
        )}
      </div>
      {floors.map((floor) => {
        const drawn = placed.find((one) => one.floor.id === floor.id);
        return (
          <div key={floor.id} className="stack stack-tight">
            <h3>{floor.name}</h3>
            {drawn ? (
              <FloorDrawing {...{ plan, condition, marked }} state={props.state} placed={drawn} />
            ) : (
              <p className="note">Not drawn yet.</p>
            )}
            <FloorTables {...{ plan, condition, floor }} state={props.state} />
          </div>
        );
      })}
    </div>
  );
}
