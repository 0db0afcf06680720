import { buildingFactKeys, fieldInfo } from '../../domain/model/fields.ts';
import type { Project } from '../../domain/model/project.ts';
import { FactField } from '../opening/FactField.tsx';
import { useCommand } from './useCommand.ts';

/** Asked once; an opening that differs says so itself where the question allows it. */
export function BuildingFacts({ project }: { project: Project }) {
  const command = useCommand();
  const own = buildingFactKeys.filter((key) => fieldInfo(key).scope === 'building');
  const shared = buildingFactKeys.filter((key) => fieldInfo(key).scope === 'both');
  const field = (key: (typeof buildingFactKeys)[number]) => (
    <FactField
      key={key}
      fact={key}
      of={null}
      value={project.building[key]}
      onAnswer={(value) =>
        command(`Building: ${fieldInfo(key).label}`, [{ kind: 'setBuildingFact', fact: key, value }])
      }
    />
  );
  return (
    <div className="stack">
      <div className="project-facts">{own.map(field)}</div>
      {shared.length > 0 && (
        <>
          <h3>Usual for its openings</h3>
          <p className="note">Applies to every opening without its own answer.</p>
          <div className="project-facts">{shared.map(field)}</div>
        </>
      )}
    </div>
  );
}
