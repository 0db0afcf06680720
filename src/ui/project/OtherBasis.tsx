import { useState } from 'react';
import { orderedOpenings } from '../../app/order.ts';
import { otherFooting } from '../../app/otherFooting.ts';
import type { Project } from '../../domain/model/project.ts';
import { otherBasisOf, type OtherBasisChoice } from '../../domain/schedules/otherBasis.ts';
import { basisSheet, type BasisSheet } from '../../exporting/sheets/basisSheet.ts';
import { useStore, useApp } from '../context.ts';
import { ProgressBar } from '../files/ProgressBar.tsx';
import { useSteps } from '../files/useSteps.ts';
import { BasisTable } from '../print/BasisTable.tsx';
import { EditionSelects } from './EditionSelects.tsx';

interface Compared {
  /** What was compared; another project or another choice makes the answer old. */
  readonly project: Project;
  readonly choice: OtherBasisChoice;
  readonly sheet: BasisSheet;
}

/** The project held against other editions, a second code, or fewer amendments. Nothing of it is changed. */
export function OtherBasis({ project }: { project: Project }) {
  const store = useStore();
  const chosen = useApp((state) => state.session.otherBasis);
  const choice = chosen ?? { basis: project.basis, without: [] };
  const { progress, run, stop } = useSteps();
  const [compared, setCompared] = useState<Compared | null>(null);
  const [stopped, setStopped] = useState(false);
  const choose = (change: Partial<OtherBasisChoice>) => {
    stop();
    store.getState().compareWith({ ...choice, ...change });
  };
  const compare = async () => {
    setStopped(false);
    store.getState().compareWith(choice);
    const other = otherBasisOf(project, choice);
    const there = otherFooting(project, other);
    const all = await run(orderedOpenings(project), there.decideAhead);
    if (all) setCompared({ project, choice, sheet: basisSheet(project, other, there.compared()) });
    else setStopped(true);
  };
  const answers = compared?.project === project && JSON.stringify(compared.choice) === JSON.stringify(choice);
  return (
    <div className="stack">
      <p className="note">
        Nothing of the project is changed. The sheet of the same name prints the comparison chosen here.
      </p>
      <EditionSelects basis={choice.basis} onBasis={(basis) => choose({ basis })} />
      {project.amendments.length > 0 && (
        <fieldset className="field">
          <legend>Local amendments that count</legend>
          <div className="choices">
            {project.amendments.map(({ id, says }) => (
              <label key={id} className="choice">
                <input
                  type="checkbox"
                  checked={!choice.without.includes(id)}
                  onChange={(event) =>
                    choose({
                      without: event.target.checked
                        ? choice.without.filter((one) => one !== id)
                        : [...choice.without, id],
                    })
                  }
                />
                {says}
              </label>
            ))}
          </div>
        </fieldset>
      )}
      <div className="row">
        <button type="button" className="button" disabled={progress !== null} onClick={() => void compare()}>
          Compare
        </button>
      </div>
      {progress && <ProgressBar what="Comparing openings" progress={progress} onStop={stop} />}
      <output>
        {stopped && progress === null && 'Stopped. Nothing is compared.'}
        {answers && compared.sheet.says}
      </output>
      {answers && compared.sheet.groups.length > 0 && (
        <div className="schedule-scroll">
          <BasisTable sheet={compared.sheet} />
        </div>
      )}
    </div>
  );
}
