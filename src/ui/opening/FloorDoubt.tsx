import type { Opening, Project } from '../../domain/model/project.ts';
import { floorDoubt } from '../../domain/survey/nextDoor.ts';
import { useStore } from '../context.ts';

/** Mark and floor that disagree: asked at the opening, never put right in silence. */
export function FloorDoubt({ project, opening }: { project: Project; opening: Opening }) {
  const store = useStore();
  const doubt = floorDoubt(project, opening);
  if (!doubt) return null;
  return (
    <p className="remark row">
      <span>{doubt.says}</span>
      <button
        type="button"
        className="button"
        onClick={() =>
          store
            .getState()
            .dispatch(`${opening.mark}: place`, [
              { kind: 'setOpening', id: opening.id, field: 'floorId', value: doubt.floorId },
            ])
        }
      >
        {doubt.move}
      </button>
    </p>
  );
}
