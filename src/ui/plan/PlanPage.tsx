import { linkTo } from '../../app/addresses.ts';
import { useState } from 'react';
import type { Project } from '../../domain/model/project.ts';
import { floorPlanWords, planOfFloor } from '../../domain/project/floorPlans.ts';
import { useApp } from '../context.ts';
import { ErrorPanel } from '../parts/ErrorPanel.tsx';
import { AddPlan } from './AddPlan.tsx';
import { FloorPlanView } from './FloorPlanView.tsx';
import '../photos/photos.css';
import './plan.css';

/** One floor at a time: its drawing, and where its openings and closets are on it. */
export default function PlanPage() {
  const project = useApp((state) => state.document.project);
  const selectedId = useApp((state) => state.session.selectedId);
  const opening = useApp((state) =>
    selectedId === null ? undefined : state.document.project.openings[selectedId],
  );
  const floors = Object.values(project.floors).toSorted((a, b) => a.level - b.level);
  const [chosen, setChosen] = useState(() => firstFloor(project, floors, selectedId));
  const floor = project.floors[chosen] ?? floors[0];
  const plan = floor && planOfFloor(project, floor.id);
  return (
    <div className="sheet sheet-full">
      <div className="sheet-body stack">
        <div className="row row-baseline">
          <h1>{floorPlanWords.title}</h1>
          {floor && floors.length > 1 && (
            <select
              className="input"
              aria-label="Floor"
              value={floor.id}
              onChange={(event) => setChosen(event.target.value)}
            >
              {floors.map(({ id, name }) => (
                <option key={id} value={id}>
                  {name}
                </option>
              ))}
            </select>
          )}
          {opening && (
            <a className="button" href={linkTo('walk', opening.id)}>
              {floorPlanWords.walk(opening.mark)}
            </a>
          )}
        </div>
        {!floor && (
          <p>
            {floorPlanWords.noFloors} <a href={linkTo('project')}>Project</a>
          </p>
        )}
        {floor && !plan && (
          <div className="stack">
            <p>{floorPlanWords.none}</p>
            <AddPlan key={floor.id} floor={floor} />
          </div>
        )}
        {floor && plan && (
          <ErrorPanel name="The plan">
            <FloorPlanView key={plan.id} project={project} floor={floor} plan={plan} />
          </ErrorPanel>
        )}
      </div>
    </div>
  );
}

/** The floor of the opening somebody comes from, else the first one with a drawing. */
function firstFloor(
  project: Project,
  floors: readonly { readonly id: string }[],
  openingId: string | null,
): string {
  const here = openingId === null ? undefined : project.openings[openingId]?.floorId;
  return here ?? floors.find(({ id }) => planOfFloor(project, id))?.id ?? floors[0]?.id ?? '';
}
