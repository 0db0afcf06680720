import { useId, useState } from 'react';
import { beside } from '../../app/otherFooting.ts';
import { orderedOpenings } from '../../app/order.ts';
import { applyEdits } from '../../domain/commands/command.ts';
import type { Project } from '../../domain/model/project.ts';
import { standardInWords } from '../../domain/model/standard.ts';
import {
  followEdits,
  followInWords,
  readStandard,
  type StandardFile,
} from '../../domain/project/standardFile.ts';
import { type BasisSheet, standardSheet } from '../../exporting/sheets/basisSheet.ts';
import { ProgressBar } from '../files/ProgressBar.tsx';
import { useSteps } from '../files/useSteps.ts';
import { BasisTable } from '../print/BasisTable.tsx';
import { MakeStandard } from './MakeStandard.tsx';
import { useCommand } from './useCommand.ts';

/** Owners’ standards: followed from a file, in an edition, and made from what this project holds. */
export function Standards({ project }: { project: Project }) {
  const followed = Object.values(project.standards);
  return (
    <div className="stack">
      <p className="note">
        An owner’s standard is a file with what one owner wants in every building: rules, weights, preferred
        devices, products, items, templates to start openings from, and how schedules are read. It adds to the
        codes and lifts nothing in them.
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
