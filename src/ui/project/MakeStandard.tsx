import { useId, useState } from 'react';
import { randomIds } from '../../app/clock.ts';
import { mappingFrom } from '../../domain/import/headers.ts';
import type { Project } from '../../domain/model/project.ts';
import { standardOf, standardText } from '../../domain/project/standardFile.ts';
import { readTemplates, templatesHelp } from '../../domain/project/standardHelp.ts';
import { counted } from '../../domain/text/counted.ts';
import { useApplication } from '../context.ts';
import { downloadText, fileName } from '../files/download.ts';

/** What this project holds for its owner, under a name and an edition of the owner’s. */
export function MakeStandard({ project }: { project: Project }) {
  const id = useId();
  const { preferences } = useApplication();
  const [first] = Object.values(project.standards);
  const [name, setName] = useState(first?.name ?? '');
  const [edition, setEdition] = useState('');
  const [typed, setTyped] = useState('');
  const [withMappings, setWithMappings] = useState(false);
  const [told, setTold] = useState('');
  const columns = mappingFrom(preferences.get('columnsByHand'));
  const words = mappingFrom(preferences.get('wordsByHand'));
  const mappings = Object.keys(columns).length + Object.keys(words).length;
  const save = () => {
    if (name.trim() === '' || edition.trim() === '')
      return setTold('A standard needs a name and an edition.');
    const read = readTemplates(project, typed);
    if (!read.ok) return setTold(read.says);
    const known = Object.values(project.standards).find((one) => one.name === name.trim());
    const file = standardOf(
      project,
      { id: known?.id ?? randomIds(), name: name.trim(), edition: edition.trim() },
      {
        templates: { ...known?.templates, ...read.templates },
        columns: { ...known?.columns, ...(withMappings ? columns : {}) },
        words: { ...known?.words, ...(withMappings ? words : {}) },
      },
    );
    const saved = fileName(name, `edition ${edition.trim()}.standard.json`);
    downloadText(saved, standardText(file), 'application/json');
    setTold(`${saved} was handed to the browser to save.`);
  };
  return (
    <form
      className="stack"
      aria-label="Save this project’s standard"
      onSubmit={(event) => {
        event.preventDefault();
        save();
      }}
    >
      <h3>Make a standard from this project</h3>
      <div className="project-fields">
        <label className="field">
          <span className="field-label">Name of the standard</span>
          <input className="input" value={name} onChange={(event) => setName(event.target.value)} />
        </label>
        <label className="field">
          <span className="field-label">Edition</span>
          <input className="input" value={edition} onChange={(event) => setEdition(event.target.value)} />
        </label>
      </div>
      <div className="field">
        <label className="field-label" htmlFor={`${id}templates`}>
          Openings to take along as templates
        </label>
        <textarea
          id={`${id}templates`}
          className="input"
          rows={3}
          aria-describedby={`${id}help`}
          value={typed}
          onChange={(event) => setTyped(event.target.value)}
        />
        <p id={`${id}help`} className="field-help">
          {templatesHelp}
        </p>
      </div>
      {mappings > 0 && (
        <label className="choice">
          <input
            type="checkbox"
            checked={withMappings}
            onChange={(event) => setWithMappings(event.target.checked)}
          />
          <span>
            Take along how columns and words of schedules were read by hand in this browser (
            {counted(mappings, 'mapping')})
          </span>
        </label>
      )}
      <div className="row">
        <button type="submit" className="button">
          Save this project’s rules and products as a standard
        </button>
      </div>
      <output>{told}</output>
    </form>
  );
}
