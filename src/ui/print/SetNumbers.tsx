import { useState } from 'react';
import type { Project } from '../../domain/model/project.ts';
import type { Decisions } from '../../domain/decide/decision.ts';
import { fixNumbers, numberingInWords } from '../../domain/sets/setNumbers.ts';
import { hardwareSets } from '../../domain/sets/sets.ts';
import { useCommand } from '../project/useCommand.ts';
import { SetNames } from './SetNames.tsx';

/** Numbers are fixed when an edition is issued, or here by a person, as one step that can be undone. */
export function SetNumbers({ project, decisions }: { project: Project; decisions: Decisions }) {
  const command = useCommand();
  const [refused, setRefused] = useState('');
  const sets = hardwareSets(project, decisions);
  if (sets.length === 0) return null;
  const edits = fixNumbers(project, sets);
  return (
    <section className="stack" aria-label="Set numbers">
      <h2>Set numbers</h2>
      {/* Said again once they are fixed, also to somebody who does not see the button go. */}
      <output className="stack">
        {numberingInWords(project, sets).map((line) => (
          <span key={line}>{line}</span>
        ))}
      </output>
      {refused !== '' && (
        <p role="alert" className="field-error">
          {refused}
        </p>
      )}
      <div className="row">
        <button
          type="button"
          className="button"
          disabled={edits.length === 0}
          onClick={() => setRefused(command('Set numbers fixed', edits) ?? '')}
        >
          Fix set numbers
        </button>
      </div>
      <SetNames project={project} sets={sets} />
      <p className="note">
        Fixed when an edition is issued, or here before that: later issues then keep every set number.
      </p>
    </section>
  );
}
