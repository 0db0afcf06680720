import { linkTo } from '../../app/addresses.ts';
import { useState } from 'react';
import { randomIds } from '../../app/clock.ts';
import type { Project, Space } from '../../domain/model/project.ts';
import { loadOf, originsOf } from '../../domain/egress/spaceLoad.ts';
import { kindInWords } from '../../domain/building/sentences.ts';
import { securityLevelWords, spacesInOrder, standsAtSpace } from '../../domain/project/places.ts';
import { emptySpace, readSpace, spaceDraftOf, useAndAreaInWords } from '../../domain/project/spaceDraft.ts';
import { SpaceForm } from './SpaceForm.tsx';
import { useDrafted } from '../parts/useDraft.ts';
import { useCommand } from './useCommand.ts';

/** Rooms and ways that openings join; what is left empty is not known. */
export function Spaces({ project }: { project: Project }) {
  const command = useCommand();
  const [editing, setEditing] = useState<string | null>(useDrafted('space/'));
  const spaces = spacesInOrder(project);
  const keep = (id: string) => (draft: Parameters<typeof readSpace>[2]) => {
    const read = readSpace(project, id, draft);
    if (!read.ok) return read;
    const says = command(`Space ${read.value.name}`, [{ kind: 'putSpace', id, value: read.value }]);
    if (says !== undefined) return { field: 'name', says };
    setEditing(null);
    return undefined;
  };
  return (
    <div className="stack">
      {spaces.length === 0 && <p className="note">No space yet.</p>}
      {spaces.length > 0 && (
        <div className="schedule-scroll">
          <table className="schedule schedule-folds schedule-close">
            <thead>
              <tr>
                <th scope="col">Space</th>
                <th scope="col">Floor</th>
                <th scope="col">Kind</th>
                <th scope="col">Security level</th>
                <th scope="col">Use and area</th>
                <th scope="col" className="num">
                  Occupant load
                </th>
                <th scope="col">
                  <span className="visually-hidden">Actions</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {spaces.map((space) =>
                editing === space.id ? (
                  <tr key={space.id}>
                    <td colSpan={7} className="space-editing">
                      <SpaceForm
                        project={project}
                        at={{
                          place: `space/${space.id}`,
                          label: `Space ${space.name}`,
                          href: linkTo('project'),
                        }}
                        start={spaceDraftOf(space)}
                        button="Keep"
                        onKeep={keep(space.id)}
                        onCancel={() => setEditing(null)}
                      />
                    </td>
                  </tr>
                ) : (
                  <SpaceRow
                    key={space.id}
                    project={project}
                    space={space}
                    onEdit={() => setEditing(space.id)}
                  />
                ),
              )}
            </tbody>
          </table>
        </div>
      )}
      {editing === 'new' ? (
        <SpaceForm
          project={project}
          at={{ place: 'space/new', label: 'New space', href: linkTo('project') }}
          start={emptySpace}
          button="Add"
          onKeep={(draft) => keep(randomIds())(draft)}
          onCancel={() => setEditing(null)}
        />
      ) : (
        <div className="row">
          <button type="button" className="button" onClick={() => setEditing('new')}>
            New space
          </button>
        </div>
      )}
    </div>
  );
}

function SpaceRow({ project, space, onEdit }: { project: Project; space: Space; onEdit: () => void }) {
  const command = useCommand();
  const [problem, setProblem] = useState('');
  const floor = space.floorId === null ? undefined : project.floors[space.floorId];
  const { people, typed } = loadOf(space, project.basis);
  const remove = () =>
    setProblem(
      standsAtSpace(project, space.id) ??
        command(`Remove ${space.name}`, [{ kind: 'putSpace', id: space.id, value: null }]) ??
        '',
    );
  return (
    <>
      <tr>
        <th scope="row" data-head="Space">
          {space.name}
        </th>
        <td data-head="Floor">{floor?.name ?? 'Not stated'}</td>
        <td data-head="Kind">{kindInWords(space)}</td>
        <td data-head="Security level">
          {space.securityLevel === null ? <NotKnown /> : securityLevelWords[space.securityLevel]}
        </td>
        <td data-head="Use and area">
          {useAndAreaInWords(space) ?? <NotKnown />}
          {originsOf(space).map((says) => (
            <div key={says} className="note">
              {says}
            </div>
          ))}
        </td>
        <td data-head="Occupant load" className="num">
          {people === null ? (
            <NotKnown />
          ) : typed === null ? (
            <span className="value-assumed">{people}, worked out</span>
          ) : (
            people
          )}
        </td>
        <td className="space-actions">
          <button type="button" className="button button-small" onClick={onEdit}>
            Edit<span className="visually-hidden"> {space.name}</span>
          </button>
          <button type="button" className="button button-small button-quiet" onClick={remove}>
            Remove<span className="visually-hidden"> {space.name}</span>
          </button>
        </td>
      </tr>
      {problem !== '' && (
        <tr>
          <td colSpan={7}>
            <p role="alert" className="field-error">
              {problem}
            </p>
          </td>
        </tr>
      )}
    </>
  );
}

function NotKnown() {
  return <span className="value-unknown">not known</span>;
}
