import { linkTo } from '../../app/addresses.ts';
import { useMemo } from 'react';
import type { Project } from '../../domain/model/project.ts';
import { type DoorLeft, leaveFloor, leaveFloorWords } from '../../domain/survey/leaveFloor.ts';
import { floorPlanWords } from '../../domain/project/floorPlans.ts';
import { useApplication } from '../context.ts';
import { useDecisions } from '../useDecisions.ts';
import { Unfolded } from '../parts/Unfolded.tsx';

interface Props {
  readonly project: Project;
  readonly floorId: string | null;
}

/** The doors of a floor: what is done, what is not, and what somebody has to come back for. */
export function FloorLeft({ project, floorId }: Props) {
  return (
    <Unfolded summary={leaveFloorWords.title}>
      <Lists project={project} floorId={floorId} />
    </Unfolded>
  );
}

function Lists({ project, floorId }: Props) {
  const app = useApplication();
  const { decisions } = useDecisions();
  const left = useMemo(() => leaveFloor(project, floorId, decisions), [project, floorId, decisions]);
  return (
    <div className="stack floor-left">
      <p className="lead">
        {floorId === null ? '' : `${project.floors[floorId]?.name ?? ''}: `}
        {left.says}
      </p>
      <Doors name={leaveFloorWords.unlawful} doors={left.unlawful} />
      <Doors name={leaveFloorWords.revisit} doors={left.revisit} />
      <Doors name={leaveFloorWords.photosMissing} doors={left.photosMissing} />
      <Doors name={leaveFloorWords.open} doors={left.open} />
      {left.missingMarks.length > 0 && (
        <p>
          <strong>{leaveFloorWords.missingMarks}:</strong> {left.missingMarks.join(', ')}
        </p>
      )}
      <Doors name={leaveFloorWords.done} doors={left.done} />
      <p className="note screen-only">{app.lastCopy()}</p>
      <p className="row screen-only">
        <button type="button" className="button" onClick={() => print()}>
          Print this list
        </button>
        <a className="button" href={linkTo('plan')}>
          {floorPlanWords.fromWalk}
        </a>
        <a className="button" href={linkTo('files')}>
          Save or send the project file
        </a>
      </p>
    </div>
  );
}

function Doors({ name, doors }: { name: string; doors: readonly DoorLeft[] }) {
  return (
    <section className="stack stack-tight" aria-label={name}>
      <h3>
        {name} ({doors.length})
      </h3>
      {doors.length > 0 && (
        <ul className="floor-doors">
          {doors.map(({ id, mark, why }) => (
            <li key={id}>
              <a className="mark" href={linkTo('walk', id)}>
                {mark}
              </a>{' '}
              {why}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
