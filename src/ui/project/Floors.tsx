import { linkTo } from '../../app/addresses.ts';
import { useState } from 'react';
import { randomIds } from '../../app/clock.ts';
import type { Floor, Project } from '../../domain/model/project.ts';
import {
  floorNameProblem,
  floorsInOrder,
  moveFloor,
  newFloor,
  standsOnFloor,
} from '../../domain/project/places.ts';
import { AddName } from './AddName.tsx';
import { TextField } from './TextField.tsx';
import { useCommand } from './useCommand.ts';

/** The top floor stands first, as in a section of the building. */
export function Floors({ project }: { project: Project }) {
  const command = useCommand();
  const floors = floorsInOrder(project);
  return (
    <div className="stack">
      {floors.length === 0 && (
        <p className="note">No floors yet. The door schedule is sorted by floor, so name them here.</p>
      )}
      {floors.length > 0 && (
        <ol className="places" reversed>
          {floors.toReversed().map((floor, index) => (
            <FloorRow
              key={floor.id}
              project={project}
              floor={floor}
              isTop={index === 0}
              isLowest={index === floors.length - 1}
            />
          ))}
        </ol>
      )}
      <AddName
        label="New floor, above the others"
        at={{ place: 'floor/new', href: linkTo('project') }}
        button="Add floor"
        onAdd={(name) => {
          const made = newFloor(project, randomIds(), name);
          if (!made.ok) return made.says;
          return command(`New floor ${made.value.name}`, [
            { kind: 'putFloor', id: made.value.id, value: made.value },
          ]);
        }}
      />
    </div>
  );
}

interface RowProps {
  readonly project: Project;
  readonly floor: Floor;
  readonly isTop: boolean;
  readonly isLowest: boolean;
}

function FloorRow({ project, floor, isTop, isLowest }: RowProps) {
  const command = useCommand();
  const [problem, setProblem] = useState('');
  const move = (way: 'up' | 'down') =>
    setProblem(command(`${floor.name}: order`, moveFloor(project, floor.id, way)) ?? '');
  const remove = () =>
    setProblem(
      standsOnFloor(project, floor.id) ??
        command(`Remove ${floor.name}`, [{ kind: 'putFloor', id: floor.id, value: null }]) ??
        '',
    );
  return (
    <li className="place">
      <TextField
        label="Name of the floor"
        at={{ place: `floor/${floor.id}`, href: linkTo('project') }}
        hideLabel
        value={floor.name}
        onKeep={(name) =>
          floorNameProblem(project, floor.id, name) ??
          command(`Floor ${name.trim()}`, [
            { kind: 'putFloor', id: floor.id, value: { ...floor, name: name.trim() } },
          ])
        }
      />
      <div className="row">
        <button type="button" className="button button-small" disabled={isTop} onClick={() => move('up')}>
          Up<span className="visually-hidden"> with {floor.name}</span>
        </button>
        <button
          type="button"
          className="button button-small"
          disabled={isLowest}
          onClick={() => move('down')}
        >
          Down<span className="visually-hidden"> with {floor.name}</span>
        </button>
        <button type="button" className="button button-small button-quiet" onClick={remove}>
          Remove<span className="visually-hidden"> {floor.name}</span>
        </button>
      </div>
      {problem !== '' && (
        <p role="alert" className="field-error">
          {problem}
        </p>
      )}
    </li>
  );
}
