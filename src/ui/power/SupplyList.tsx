import { linkTo } from '../../app/addresses.ts';
import { useState } from 'react';
import { randomIds } from '../../app/clock.ts';
import type { Project } from '../../domain/model/project.ts';
import {
  currentChoices,
  emptySupply,
  feedChoices,
  readSupply,
  supplyDraftOf,
  yesNoChoices,
} from '../../domain/project/powerDrafts.ts';
import { closetsInOrder } from '../../domain/power/place.ts';
import type { SupplyLine } from '../../exporting/sheets/powerSheet.ts';
import { useCommand } from '../project/useCommand.ts';
import { DraftForm } from './DraftForm.tsx';

type Key = keyof typeof emptySupply;

const fieldsOf = (project: Project) =>
  [
    { key: 'name', label: 'Name' },
    {
      key: 'closetId',
      label: 'Closet',
      options: [['', 'In none'], ...closetsInOrder(project).map(({ id, name }) => [id, name] as const)],
    },
    { key: 'volts', label: 'Output', unit: 'V' },
    { key: 'current', label: 'Current', options: currentChoices },
    { key: 'amps', label: 'Rating', unit: 'A', help: 'Continuous, as on its nameplate.' },
    { key: 'peakAmps', label: 'Peak rating', unit: 'A', help: 'Only where the maker gives one.' },
    { key: 'outputs', label: 'Outputs' },
    { key: 'class2', label: 'Class 2 outputs', options: yesNoChoices },
    { key: 'batteryAh', label: 'Battery that is there', unit: 'Ah', help: 'Of the whole set; 0 for none.' },
    { key: 'holdsVolts', label: 'Holds its volts on battery', options: yesNoChoices },
    { key: 'fedBy', label: 'Fed by', options: feedChoices },
  ] as const;

/** The supplies of one closet with what they carry. */
export function SupplyList(props: {
  project: Project;
  lines: readonly SupplyLine[];
  closetId: string | null;
}) {
  const { project, lines, closetId } = props;
  const command = useCommand();
  const [editing, setEditing] = useState<string | null>(null);
  const keep = (id: string) => (draft: Readonly<Record<Key, string>>) => {
    const read = readSupply(project, id, draft);
    if (!read.ok) return read;
    const says = command(`Supply ${read.value.name}`, [{ kind: 'putSupply', id, value: read.value }]);
    if (says !== undefined) return { field: '', says };
    setEditing(null);
    return undefined;
  };
  return (
    <>
      {lines.length > 0 && (
        <table className="schedule schedule-close schedule-folds">
          <thead>
            <tr>
              <th scope="col">Supply</th>
              <th scope="col">Rating</th>
              <th scope="col">Load</th>
              <th scope="col">Room left</th>
              <th scope="col">At the largest start</th>
              <th scope="col">Outputs</th>
              <th scope="col">Battery</th>
              <th scope="col">
                <span className="visually-hidden">Actions</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {lines.map((line) => {
              const supply = project.supplies[line.id];
              return supply && editing === line.id ? (
                <tr key={line.id}>
                  <td colSpan={8} className="space-editing">
                    <SupplyForm
                      project={project}
                      place={line.id}
                      start={supplyDraftOf(supply)}
                      button="Keep"
                      onKeep={keep(line.id)}
                      onCancel={() => setEditing(null)}
                    />
                  </td>
                </tr>
              ) : (
                <tr key={line.id}>
                  <th scope="row">{line.name}</th>
                  <td data-head="Rating">{line.rating}</td>
                  <td data-head="Load">{line.load}</td>
                  <td data-head="Room left">{line.headroom}</td>
                  <td data-head="At the largest start">{line.peak}</td>
                  <td data-head="Outputs">{line.outputs}</td>
                  <td data-head="Battery">{line.battery}</td>
                  <td>
                    <Actions line={line} onEdit={() => setEditing(line.id)} />
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      )}
      {closetId !== null &&
        (editing === 'new' ? (
          <SupplyForm
            project={project}
            place={`new in ${closetId}`}
            start={{ ...emptySupply, closetId }}
            button="Add"
            onKeep={keep(randomIds())}
            onCancel={() => setEditing(null)}
          />
        ) : (
          <div className="row">
            <button type="button" className="button button-small" onClick={() => setEditing('new')}>
              New supply<span className="visually-hidden"> in {project.closets[closetId]?.name}</span>
            </button>
          </div>
        ))}
    </>
  );
}

interface FormProps {
  readonly project: Project;
  readonly place: string;
  readonly start: Readonly<Record<Key, string>>;
  readonly button: string;
  readonly onKeep: (
    draft: Readonly<Record<Key, string>>,
  ) => { readonly field: string; readonly says: string } | undefined;
  readonly onCancel: () => void;
}

function SupplyForm({ project, place, ...rest }: FormProps) {
  const at = { place: `supply/${place}`, label: 'Supply', href: linkTo('power') };
  return <DraftForm<Key> name="Supply" at={at} fields={fieldsOf(project)} {...rest} />;
}

function Actions({ line, onEdit }: { line: SupplyLine; onEdit: () => void }) {
  const command = useCommand();
  const remove = () => command(`Remove ${line.name}`, [{ kind: 'putSupply', id: line.id, value: null }]);
  return (
    <span className="row">
      <button type="button" className="button button-small" onClick={onEdit}>
        Edit<span className="visually-hidden"> {line.name}</span>
      </button>
      <button type="button" className="button button-small button-quiet" onClick={remove}>
        Remove<span className="visually-hidden"> {line.name}</span>
      </button>
    </span>
  );
}
