import { linkTo } from '../../app/addresses.ts';
import type { FloorPlan } from '../../domain/model/floorPlan.ts';
import type { Floor, Project } from '../../domain/model/project.ts';
import { floorPlanWords, type Pinned, withoutPlan } from '../../domain/project/floorPlans.ts';
import { useApp, useStore } from '../context.ts';

interface Props {
  readonly project: Project;
  readonly floor: Floor;
  readonly plan: FloorPlan;
  readonly pinned: readonly Pinned[];
  readonly onMove: (one: Pinned) => void;
}

/** What stands on the plan, as a list: each opening leads to the walk, also where the drawing itself is not at hand. */
export function PlanList({ project, floor, plan, pinned, onMove }: Props) {
  const { dispatch, tell } = useStore().getState();
  const isReadOnly = useApp(({ saving }) => saving.kind === 'readOnly');
  return (
    <details>
      <summary>
        {floorPlanWords.onPlan} <span className="note">{pinned.length}</span>
      </summary>
      <div className="stack">
        <ul className="plan-list">
          {pinned.map((one) => (
            <li key={one.id} className="row">
              {one.is === 'opening' ? (
                <a className="button button-small mark" href={linkTo('walk', one.id)}>
                  {floorPlanWords.walk(one.name)}
                </a>
              ) : (
                <span className="mark">{one.name}</span>
              )}
              {!isReadOnly && (
                <>
                  <button
                    type="button"
                    className="button button-small"
                    aria-label={floorPlanWords.move(one.name)}
                    onClick={() => onMove(one)}
                  >
                    Move
                  </button>
                  <button
                    type="button"
                    className="button button-remove button-small"
                    aria-label={floorPlanWords.unpin(one.name)}
                    onClick={() =>
                      dispatch(`${one.name}: off the plan`, [{ kind: 'putPin', id: one.id, value: null }])
                    }
                  >
                    Take off
                  </button>
                </>
              )}
            </li>
          ))}
        </ul>
        {!isReadOnly && (
          <button
            type="button"
            className="button button-remove self-start"
            onClick={() => {
              dispatch(`Plan of ${floor.name} removed`, withoutPlan(project, plan));
              tell({ kind: 'told', says: floorPlanWords.removed });
            }}
          >
            {floorPlanWords.other}
          </button>
        )}
      </div>
    </details>
  );
}
