import { useMemo } from 'react';
import { decisionFor, reportFor } from '../../app/decisions.ts';
import { orderedOpenings } from '../../app/derive.ts';
import { knownValues } from '../../domain/decide/factView.ts';
import { nextQuestion } from '../../domain/decide/whatMatters.ts';
import type { Fact } from '../../domain/model/fact.ts';
import { type FactKey, fieldInfo } from '../../domain/model/fields.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import { elevation } from '../../exporting/drawing/elevation.ts';
import { drawingSizes } from '../../exporting/drawing/paper.ts';
import { useApp, useStore } from '../context.ts';
import { DrawingView } from '../face/DrawingView.tsx';
import { FactField } from '../opening/FactField.tsx';
import { DecisionStateMark } from '../parts/DecisionStateMark.tsx';
import { NewOpening } from '../schedule/NewOpening.tsx';
import './walk.css';

/** One question at a time, for a phone in a corridor: the question that settles most, answers as large as a thumb. */
export default function WalkPage() {
  const project = useApp((state) => state.document.project);
  const selectedId = useApp((state) => state.session.selectedId);
  const order = orderedOpenings(project);
  const opening = (selectedId === null ? undefined : project.openings[selectedId]) ?? order[0];
  return (
    <div className="sheet walk">
      <div className="sheet-body stack">
        {opening ? (
          <WalkOpening key={opening.id} project={project} opening={opening} order={order} />
        ) : (
          <div className="empty stack">
            <h1>Nothing to walk yet</h1>
            <p>Add the first opening with the mark that stands on the drawing.</p>
          </div>
        )}
        <NewOpening />
      </div>
    </div>
  );
}

function WalkOpening(props: { project: Project; opening: Opening; order: readonly Opening[] }) {
  const { project, opening, order } = props;
  const store = useStore();
  const decision = decisionFor(project, opening);
  const report = reportFor(project, opening);
  const next = useMemo(() => nextQuestion(project, opening, decision), [project, opening, decision]);
  const drawing = useMemo(() => {
    const candidate = decision.chosen?.candidate;
    return elevation(knownValues(decision.slots), candidate && { ...candidate }, drawingSizes.phone);
  }, [decision]);
  const index = order.findIndex((one) => one.id === opening.id);
  const answer = (key: FactKey) => (fact: Fact<string | number | boolean> | null) => {
    const edit =
      fieldInfo(key).scope === 'building'
        ? ({ kind: 'setBuildingFact', fact: key, value: fact } as const)
        : ({ kind: 'setFact', id: opening.id, fact: key, value: fact } as const);
    const result = store.getState().dispatch(`${opening.mark}: ${fieldInfo(key).label}`, [edit]);
    return result.ok ? undefined : result.says;
  };
  const notKnown = (key: FactKey) => answer(key)({ is: 'unknown' });

  return (
    <>
      <div className="row row-baseline">
        <h1 className="mark mark-large">{opening.mark}</h1>
        <p className="soft">{placeOf(project, opening)}</p>
      </div>
      <section className="section next-question" aria-label="Next question">
        {next ? (
          <>
            {fieldInfo(next).scope === 'building' && <p className="lettering">Once for the whole building</p>}
            <FactField key={next} fact={next} value={undefined} onAnswer={answer(next)} asQuestion />
            <button type="button" className="button button-quiet" onClick={() => notKnown(next)}>
              I can’t tell
            </button>
          </>
        ) : (
          <p className="lead">Nothing more needs to be asked here.</p>
        )}
      </section>
      <section className="section" aria-label="Decision" aria-live="polite">
        <DecisionStateMark state={decision.state} large />
        <p className="lead">{report.headline}</p>
        <p>
          <a href={`#/opening/${encodeURIComponent(opening.id)}`}>Reasons and every fact</a>
        </p>
      </section>
      <DrawingView drawing={drawing} />
      <nav className="thumb-bar" aria-label="Openings">
        <Step to={order[index - 1]} word="←" />
        <Step to={order[index + 1]} word="→" />
      </nav>
    </>
  );
}

function Step({ to, word }: { to: Opening | undefined; word: string }) {
  if (!to) return <span />;
  return (
    <a className="button" href={`#/walk/${encodeURIComponent(to.id)}`}>
      {word === '←' ? `← ${to.mark}` : `${to.mark} →`}
    </a>
  );
}

function placeOf(project: Project, opening: Opening): string {
  const name = (id: string | null) => (id === null ? undefined : project.spaces[id]?.name);
  return [name(opening.fromSpaceId), name(opening.toSpaceId)].filter(Boolean).join(' → ');
}
