import { useMemo } from 'react';
import type { Opening, Project } from '../../domain/model/project.ts';
import { sidesByPlan, type SidesByPlan } from '../../domain/project/sidesByPlan.ts';
import { surveyWords } from '../../domain/survey/words.ts';
import { useApp, useStore } from '../context.ts';

/** Sides that the pins on the plan tell, at the door; taken by one press, never by themselves. */
export function SidesHere({ project, opening }: { project: Project; opening: Opening }) {
  const sides = useMemo(() => sidesByPlan(project, opening), [project, opening]);
  if (!sides) return null;
  return (
    <section className="remark stack stack-tight" aria-label="Sides by the plan">
      <p>{sides.says}</p>
      <SideChoices opening={opening} sides={sides} />
      <p className="note">{surveyWords.whichSide}</p>
    </section>
  );
}

export function SideChoices({ opening, sides }: { opening: Opening; sides: SidesByPlan }) {
  const store = useStore();
  const isReadOnly = useApp(({ saving }) => saving.kind === 'readOnly');
  return (
    <div className="row">
      {sides.choices.map(({ label, edits }) => (
        <button
          key={label}
          type="button"
          className="button"
          disabled={isReadOnly}
          aria-label={`${opening.mark}: ${label}`}
          onClick={() => store.getState().dispatch(`${opening.mark}: place`, edits)}
        >
          {label}
        </button>
      ))}
    </div>
  );
}
