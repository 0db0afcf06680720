import { linkTo } from '../../app/addresses.ts';
import { type RefObject, useEffect, useRef, useState } from 'react';
import { reportFor } from '../../app/reports.ts';
import { shownStateWords } from '../../domain/words/states.ts';
import type { FactKey } from '../../domain/model/fields.ts';
import { asksForOrder } from '../../domain/survey/nextQuestion.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import { answersGiven } from '../../domain/survey/answers.ts';
import { nextDoorWords } from '../../domain/survey/nextDoor.ts';
import { placeOf } from '../../domain/survey/place.ts';
import { surveyEnd } from '../../domain/survey/surveyEnd.ts';
import { usualFrom } from '../../domain/survey/usual.ts';
import { surveyWords } from '../../domain/survey/words.ts';
import { useStore } from '../context.ts';
import { ConfirmAll } from '../opening/ConfirmAll.tsx';
import { FloorDoubt } from '../opening/FloorDoubt.tsx';
import { Notes } from '../opening/Notes.tsx';
import { NothingMore } from '../opening/NothingMore.tsx';
import { PlacePicks } from '../opening/PlacePicks.tsx';
import { SameAs } from '../opening/SameAs.tsx';
import { SidesHere } from '../opening/SidesByPlan.tsx';
import { SameBut } from '../opening/SameBut.tsx';
import { useDecision } from '../useDecisions.ts';
import { DecisionStateMark } from '../parts/DecisionStateMark.tsx';
import { useStartAtTop } from '../parts/useStartAtTop.ts';
import { Photos } from '../photos/Photos.tsx';
import { NewOpening } from '../schedule/NewOpening.tsx';
import { AnswersGiven } from './AnswersGiven.tsx';
import { Asked } from './Asked.tsx';
import { Contradictions } from './Contradictions.tsx';
import { DoorLines } from './DoorLines.tsx';
import { FloorLeft } from './FloorLeft.tsx';
import { NewPlace } from './NewPlace.tsx';
import { NextDoor } from './NextDoor.tsx';
import { ThumbBar } from './ThumbBar.tsx';
import { useStop } from './useStop.ts';
import { WalkDrawing } from './WalkDrawing.tsx';

interface Props {
  readonly project: Project;
  readonly opening: Opening;
  readonly order: readonly Opening[];
}

export function WalkOpening({ project, opening, order }: Props) {
  const top = useStartAtTop();
  const store = useStore();
  const { decision, state } = useDecision(opening.id);
  const report = reportFor(decision);
  const asking = useStop(project, opening, decision);
  /** An answer that is being corrected; it is asked in place of the next question. */
  const [again, setAgain] = useState<FactKey | null>(null);
  const asked = again ?? asking.ask;
  const what = again ?? (asking.ask?.kind === 'look' ? asking.ask.look.id : asking.ask?.key) ?? 'done';
  const forOrder = again === null && asking.ask?.kind === 'fact' && asksForOrder(decision);
  const heading = useFocusOn(what, top, decision.state === 'refused');
  const given = answersGiven(opening);
  const makeUsual = () =>
    store.getState().dispatch(
      `The usual: ${opening.mark}`,
      usualFrom(opening.facts).map(({ key, fact }) => ({ kind: 'setUsual', fact: key, value: fact })),
    );

  return (
    <>
      <div className="sheet-body stack">
        <div className="row row-baseline">
          <h1 ref={top} tabIndex={-1} className="mark mark-large walk-mark">
            {opening.mark}
          </h1>
          <details className="walk-place">
            <summary>{placeOf(project, opening)}</summary>
            <div className="row opening-head">
              <PlacePicks project={project} opening={opening} />
              <NewPlace project={project} opening={opening} />
            </div>
          </details>
        </div>
        <FloorDoubt project={project} opening={opening} />
        <SidesHere project={project} opening={opening} />
        <DoorLines project={project} opening={opening} decision={decision} onAsk={setAgain} />
        <Contradictions findings={report.findings} onMend={setAgain} />
        <SameBut project={project} opening={opening} />
        <ConfirmAll opening={opening} />
        <section className="section next-question" aria-label="Next question">
          {asked ? (
            <Asked
              project={project}
              opening={opening}
              asking={asking}
              report={report}
              forOrder={forOrder}
              again={again}
              onAgain={setAgain}
              headingRef={heading}
            />
          ) : (
            <NothingMore end={surveyEnd(project, opening, decision)} headingRef={heading} onAsk={setAgain} />
          )}
        </section>
        {!asked && <NextDoor project={project} opening={opening} />}
        <AnswersGiven answers={given} onChange={setAgain} />
        <SameAs project={project} opening={opening} goesTo="walk" />
        <Photos key={`photos ${opening.id}`} project={project} opening={opening} />
        <section className="section" aria-label="Decision">
          <DecisionStateMark state={state} large />
          <p className="note">{shownStateWords[state].means}</p>
          {decision.chosen && (
            <p className="lead">
              {report.headline} · {report.release}
            </p>
          )}
          <p>
            <a className="step-link" href={linkTo('opening', opening.id)}>
              Reasons and every fact
            </a>
          </p>
          <p className="note">{report.caution}</p>
        </section>
        <Notes opening={opening} />
        <WalkDrawing decision={decision} />
        <FloorLeft project={project} floorId={opening.floorId} />
        <div className="row">
          <button
            type="button"
            className="button"
            aria-pressed={asking.shortest}
            onClick={() => asking.setShortest(!asking.shortest)}
          >
            {surveyWords.shortestWay}
          </button>
          {!asked && usualFrom(opening.facts).length > 0 && (
            <button type="button" className="button" onClick={makeUsual}>
              {nextDoorWords.makeUsual}
            </button>
          )}
        </div>
        <NewOpening goesTo="walk" likeId={opening.id} />
      </div>
      <ThumbBar
        opening={opening}
        order={order}
        state={state}
        headline={report.headline}
        station={asking.stop?.station ?? ''}
      />
    </>
  );
}

/**
 * Once another question stands there, the cursor and a reader are at it, and it is in sight. An answer that has the
 * opening refused brings the top into sight instead: why stands above the question.
 */
function useFocusOn(what: string, top: RefObject<HTMLElement | null>, refused: boolean) {
  const heading = useRef<HTMLHeadingElement>(null);
  const before = useRef({ what, refused });
  useEffect(() => {
    const last = before.current;
    before.current = { what, refused };
    if (last.what !== what) {
      const element = heading.current;
      element?.focus({ preventScroll: true });
      const at = element?.getBoundingClientRect().top ?? 0;
      if (at < 0 || at > innerHeight / 2) element?.scrollIntoView({ block: 'start' });
    }
    if (refused && !last.refused) top.current?.scrollIntoView({ block: 'start' });
  }, [what, refused, top]);
  return heading;
}
