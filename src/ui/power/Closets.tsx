import { linkTo } from '../../app/addresses.ts';
import { useState } from 'react';
import { randomIds } from '../../app/clock.ts';
import type { Closet } from '../../domain/model/power.ts';
import type { Project } from '../../domain/model/project.ts';
import { floorsInOrder, spacesInOrder } from '../../domain/project/places.ts';
import {
  closetDraftOf,
  emptyCloset,
  hangsOnCloset,
  readCloset,
  yesNoUnknown,
} from '../../domain/project/powerDrafts.ts';
import type { ClosetPart } from '../../exporting/sheets/powerSheet.ts';
import { useDrafted } from '../parts/useDraft.ts';
import { useCommand } from '../project/useCommand.ts';
import { DraftForm } from './DraftForm.tsx';
import { SupplyList } from './SupplyList.tsx';

type Key = keyof typeof emptyCloset;

const fieldsOf = (project: Project) =>
  [
    { key: 'name', label: 'Name' },
    {
      key: 'floorId',
      label: 'Floor',
      options: [['', 'Not stated'], ...floorsInOrder(project).map(({ id, name }) => [id, name] as const)],
    },
    {
      key: 'spaceId',
      label: 'Space it stands in',
      options: [['', 'Not stated'], ...spacesInOrder(project).map(({ id, name }) => [id, name] as const)],
    },
    { key: 'linePower', label: 'Branch circuit for supplies', options: yesNoUnknown },
    {
      key: 'temperatureC',
      label: 'Lowest temperature of the batteries',
      unit: '°C',
      help: 'Empty: a conditioned closet, 20 °C.',
    },
    { key: 'notes', label: 'What hangs there already', lines: 2 },
  ] as const;

/** Every closet with its supplies; removing one leaves what it fed listed until it goes elsewhere. */
export function Closets({ project, parts }: { project: Project; parts: readonly ClosetPart[] }) {
  const command = useCommand();
  const [editing, setEditing] = useState<string | null>(useDrafted('closet/'));
  const keep = (id: string) => (draft: Readonly<Record<Key, string>>) => {
    const read = readCloset(project, id, draft);
    if (!read.ok) return read;
    const says = command(`Closet ${read.value.name}`, [{ kind: 'putCloset', id, value: read.value }]);
    if (says !== undefined) return { field: '', says };
    setEditing(null);
    return undefined;
  };
  const form = (place: string, id: string, start: Readonly<Record<Key, string>>, button: string) => (
    <DraftForm<Key>
      name="Closet"
      at={{ place: `closet/${place}`, label: 'Closet', href: linkTo('power') }}
      fields={fieldsOf(project)}
      start={start}
      button={button}
      onKeep={keep(id)}
      onCancel={() => setEditing(null)}
    />
  );
  return (
    <div className="stack">
      {parts.length === 0 && (
        <p className="note">
          No closet yet. Enter where supplies hang or may hang; openings are assigned to it.
        </p>
      )}
      {parts.map((part) => {
        const closet = part.id === null ? undefined : project.closets[part.id];
        return (
          <section key={part.id ?? ''} className="power-closet stack stack-tight" aria-label={part.name}>
            {closet && editing === closet.id ? (
              form(closet.id, closet.id, closetDraftOf(closet), 'Keep')
            ) : (
              <ClosetHead
                project={project}
                part={part}
                closet={closet}
                onEdit={() => setEditing(closet?.id ?? null)}
              />
            )}
            <SupplyList project={project} lines={part.supplies} closetId={part.id} />
          </section>
        );
      })}
      {editing === 'new' ? (
        form('new', randomIds(), emptyCloset, 'Add')
      ) : (
        <div className="row">
          <button type="button" className="button" onClick={() => setEditing('new')}>
            New closet
          </button>
        </div>
      )}
    </div>
  );
}

interface HeadProps {
  readonly project: Project;
  readonly part: ClosetPart;
  readonly closet: Closet | undefined;
  readonly onEdit: () => void;
}

function ClosetHead({ project, part, closet, onEdit }: HeadProps) {
  const command = useCommand();
  const [asked, setAsked] = useState('');
  const remove = () => {
    if (!closet) return;
    const hangs = hangsOnCloset(project, closet.id);
    if (hangs !== undefined && asked === '') setAsked(hangs);
    else command(`Remove ${closet.name}`, [{ kind: 'putCloset', id: closet.id, value: null }]);
  };
  return (
    <>
      <div className="row row-baseline">
        <h3>{part.name}</h3>
        {closet && (
          <span className="row row-end">
            <button type="button" className="button button-small" onClick={onEdit}>
              Edit<span className="visually-hidden"> {part.name}</span>
            </button>
            <button type="button" className="button button-small button-quiet" onClick={remove}>
              {asked === '' ? 'Remove' : 'Remove all the same'}
              <span className="visually-hidden"> {part.name}</span>
            </button>
          </span>
        )}
      </div>
      {asked !== '' && <p role="alert">{asked}</p>}
      <p className="note">{part.says}</p>
    </>
  );
}
