import { useId, useState } from 'react';
import { beside } from '../../app/otherFooting.ts';
import { orderedOpenings } from '../../app/order.ts';
import { randomIds } from '../../app/clock.ts';
import { applyEdits } from '../../domain/commands/command.ts';
import type { Project } from '../../domain/model/project.ts';
import { standardInWords } from '../../domain/model/standard.ts';
import {
  followEdits,
  followInWords,
  readStandard,
  type StandardFile,
  standardOf,
  standardText,
} from '../../domain/project/standardFile.ts';
import { type BasisSheet, standardSheet } from '../../exporting/sheets/basisSheet.ts';
import { downloadText, fileName } from '../files/download.ts';
import { ProgressBar } from '../files/ProgressBar.tsx';
import { useSteps } from '../files/useSteps.ts';
import { BasisTable } from '../print/BasisTable.tsx';
import { useCommand } from './useCommand.ts';

/** Owners’ standards: followed from a file, in an edition, and made from what this project holds. */
export function Standards({ project }: { project: Project }) {
  const followed = Object.values(project.standards);
  return (
    <div className="stack">
      <p className="note">
        An owner’s standard is a file with the rules, the products, the items and the weights that one owner
        wants in every building. It adds to the codes and lifts nothing in them.
      </p>
      {followed.length === 0 ? (
        <p>This project follows none.</p>
      ) : (
        <ul>
          {followed.map((one) => (
            <li key={one.id}>{standardInWords(one)}</li>
          ))}
        </ul>
      )}
      <Follow project={project} />
      <MakeStandard project={project} />
    </div>
  );
}

interface Looked {
  readonly project: Project;
  readonly file: StandardFile;
  readonly says: readonly string[];
  readonly sheet: BasisSheet;
}

/** A file is looked at first: what it adds, changes and removes, and which openings would come out differently. */
function Follow({ project }: { project: Project }) {
  const id = useId();
  const command = useCommand();
  const { progress, run, stop } = useSteps();
  const [looked, setLooked] = useState<Looked | null>(null);
  const [told, setTold] = useState('');
  const look = async (picked: File) => {
    setLooked(null);
    setTold('');
    const read = readStandard(await picked.text());
    if (!read.ok) return setTold(read.says);
    const applied = applyEdits(project, followEdits(project, read.file));
    if (!applied.ok) return setTold('The standard does not fit this project. Nothing was taken from it.');
    const there = beside(project, applied.project);
    const all = await run(orderedOpenings(project), there.decideAhead);
    if (!all) return setTold('Stopped. Nothing was taken.');
    const sheet = standardSheet(there.compared(), standardInWords(read.file));
    setLooked({ project, file: read.file, says: followInWords(project, read.file), sheet });
  };
  const follow = ({ file }: Looked) => {
    const refused = command(`Follow ${standardInWords(file)}`, followEdits(project, file));
    setTold(refused ?? `The project follows ${standardInWords(file)}.`);
    if (refused === undefined) setLooked(null);
  };
  const current = looked?.project === project ? looked : null;
  return (
    <div className="stack">
      <div className="field">
        <label htmlFor={id} className="field-label">
          Follow a standard, or a newer edition of one
        </label>
        <input
          id={id}
          className="input"
          type="file"
          accept=".json,application/json"
          disabled={progress !== null}
          onChange={(event) => {
            const [picked] = event.target.files ?? [];
            event.target.value = '';
            if (picked) void look(picked);
          }}
        />
        <p className="field-help">You see what it would change before anything is taken.</p>
      </div>
      {progress && <ProgressBar what="Comparing openings" progress={progress} onStop={stop} />}
      <output>{told}</output>
      {current && (
        <section className="stack" aria-label="What the standard would change">
          {[...current.says, current.sheet.says].map((says) => (
            <p key={says}>{says}</p>
          ))}
          {current.sheet.groups.length > 0 && (
            <div className="schedule-scroll">
              <BasisTable sheet={current.sheet} />
            </div>
          )}
          <div className="row">
            <button type="button" className="button button-main" onClick={() => follow(current)}>
              Follow {standardInWords(current.file)}
            </button>
            <button type="button" className="button button-quiet" onClick={() => setLooked(null)}>
              Leave the project as it is
            </button>
          </div>
        </section>
      )}
    </div>
  );
}

/** The rules, products, items and weights of this project, under a name and an edition of the owner’s. */
function MakeStandard({ project }: { project: Project }) {
  const [first] = Object.values(project.standards);
  const [name, setName] = useState(first?.name ?? '');
  const [edition, setEdition] = useState('');
  const [told, setTold] = useState('');
  return (
    <form
      className="stack"
      aria-label="Save this project’s standard"
      onSubmit={(event) => {
        event.preventDefault();
        if (name.trim() === '' || edition.trim() === '')
          return setTold('A standard needs a name and an edition.');
        const known = Object.values(project.standards).find((one) => one.name === name.trim());
        const file = standardOf(project, {
          id: known?.id ?? randomIds(),
          name: name.trim(),
          edition: edition.trim(),
        });
        const saved = fileName(name, `edition ${edition.trim()}.standard.json`);
        downloadText(saved, standardText(file), 'application/json');
        setTold(`${saved} was handed to the browser to save.`);
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
      <div className="row">
        <button type="submit" className="button">
          Save this project’s rules and products as a standard
        </button>
      </div>
      <output>{told}</output>
    </form>
  );
}
