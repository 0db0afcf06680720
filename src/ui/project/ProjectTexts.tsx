import { linkTo } from '../../app/addresses.ts';
import { useState } from 'react';
import type { Project } from '../../domain/model/project.ts';
import { useApplication } from '../context.ts';
import { TextField } from './TextField.tsx';
import { useCommand } from './useCommand.ts';

const texts = [
  { field: 'name', label: 'Name of the project', lines: 1 },
  { field: 'preparedBy', label: 'Prepared by', lines: 1 },
  { field: 'jurisdiction', label: 'Jurisdiction', lines: 1 },
] as const;

export function ProjectTexts({ project }: { project: Project }) {
  const command = useCommand();
  return (
    <div className="stack">
      <div className="project-fields">
        {texts.map(({ field, label, lines }) => (
          <TextField
            key={field}
            label={label}
            at={{ place: `project/${field}`, href: linkTo('project') }}
            lines={lines}
            value={project[field]}
            onKeep={(value) => command(label, [{ kind: 'setProject', field, value }])}
          />
        ))}
        <YourName />
      </div>
      <TextField
        label="Notes"
        at={{ place: 'project/notes', href: linkTo('project') }}
        lines={3}
        value={project.notes}
        onKeep={(value) => command('Notes of the project', [{ kind: 'setProject', field: 'notes', value }])}
      />
    </div>
  );
}

/** Belongs to this browser, not to the project: two people open the same file under their own names. */
function YourName() {
  const { preferences } = useApplication();
  const [name, setName] = useState(() => preferences.get('yourName'));
  return (
    <TextField
      label="Your name"
      at={{ place: 'your-name', href: linkTo('project') }}
      value={name}
      help="Kept in this browser. It is recorded as the author of every edit and sign-off you make."
      onKeep={(text) => {
        const trimmed = text.trim();
        preferences.set('yourName', trimmed);
        setName(trimmed);
        return undefined;
      }}
    />
  );
}
