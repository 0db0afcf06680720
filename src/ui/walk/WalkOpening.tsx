import { type RefObject, useEffect, useMemo, useRef, useState } from 'react';
import { reportFor } from '../../app/reports.ts';
import { shownStateWords } from '../../domain/decide/words.ts';
import { askedForOrder, asksForOrder, nextQuestion } from '../../domain/survey/nextQuestion.ts';
import type { Fact } from '../../domain/model/fact.ts';
import { type FactKey, fieldInfo } from '../../domain/model/fields.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import { answersGiven } from '../../domain/survey/answers.ts';
import { placeOf } from '../../domain/survey/place.ts';
import { surveyEnd } from '../../domain/survey/surveyEnd.ts';
import { ConfirmAll } from '../opening/ConfirmAll.tsx';
import { Notes } from '../opening/Notes.tsx';
import { NothingMore } from '../opening/NothingMore.tsx';
import { PlacePicks } from '../opening/PlacePicks.tsx';
import { Question } from '../opening/Question.tsx';
import { useAnswer } from '../opening/useAnswer.ts';
import { useDecision } from '../useDecisions.ts';
import { DecisionStateMark } from '../parts/DecisionStateMark.tsx';
import { useStartAtTop } from '../parts/useStartAtTop.ts';
import { NewOpening } from '../schedule/NewOpening.tsx';
import { AnswersGiven } from './AnswersGiven.tsx';
import { Contradictions } from './Contradictions.tsx';
import { ThumbBar } from './ThumbBar.tsx';
import { WalkDrawing } from './WalkDrawing.tsx';

interface Props {
  readonly project: Project;
  readonly opening: Opening;
  readonly order: readonly Opening[];
}

export function WalkOpening({ project, opening, order }: Props) {
  const top = useStartAtTop();
  const { decision, state } = useDecision(opening.id);
  const report = reportFor(decision);
  const next = useMemo(() => nextQuestion(project, opening, decision), [project, opening, decision]);
  /** An answer that is being corrected; it is asked in place of the next question. */
  const [again, setAgain] = useState<FactKey | null>(null);
  const asked = again ?? next;
  const forOrder = again === null && next !== undefined && asksForOrder(decision);
  const heading = useFocusOn(asked ?? 'done', top, decision.state === 'refused');
  const given = answersGiven(opening);
  const answer = useAnswer(opening);
  const answerAsked = (key: FactKey) => (fact: Parameters<ReturnType<typeof answer>>[0]) => {
    const says = answer(key)(fact);
    if (says === undefined) setAgain(null);
    return says;
  };
  const stored = (key: FactKey) =>
    (fieldInfo(key).scope === 'building' ? project.building[key] : opening.facts[key]) as
      | Fact<unknown>
      | undefined;

  return (
    <>
      <div className="sheet-body stack">
        <div className="row row-baseline">
          <h1 ref={top} tabIndex={-1} className="mark mark-large">
            {opening.mark}
          </h1>
          <details className="walk-place">
            <summary>{placeOf(project, opening)}</summary>
            <div className="row opening-head">
              <PlacePicks project={project} opening={opening} />
            </div>
          </details>
        </div>
        <Contradictions findings={report.findings} onMend={setAgain} />
        <section className="section next-question" aria-label="Next question">
          {forOrder && <p className="note">{askedForOrder}</p>}
          {asked ? (
            <Question
              key={asked}
              fact={asked}
              of={opening}
              value={stored(asked)}
              findings={report.findings.filter((finding) => finding.field === asked)}
              onAnswer={answerAsked(asked)}
              headingRef={heading}
            >
              {again && (
                <button type="button" className="button self-start" onClick={() => setAgain(null)}>
                  Leave as is
                </button>
              )}
            </Question>
          ) : (
            <NothingMore end={surveyEnd(project, opening, decision)} headingRef={heading} onAsk={setAgain} />
          )}
        </section>
        <ConfirmAll opening={opening} />
        {!asked && <NewOpening goesTo="walk" likeId={opening.id} />}
        <AnswersGiven answers={given} onChange={setAgain} />
        <section className="section" aria-label="Decision">
          <DecisionStateMark state={state} large />
          <p className="note">{shownStateWords[state].means}</p>
          {decision.chosen && (
            <p className="lead">
              {report.headline} · {report.release}
            </p>
          )}
          <p>
            <a className="step-link" href={`#/opening/${encodeURIComponent(opening.id)}`}>
              Reasons and every fact
            </a>
          </p>
          <p className="note">{report.caution}</p>
        </section>
        <Notes opening={opening} />
        <WalkDrawing decision={decision} />
        {asked && <NewOpening goesTo="walk" likeId={opening.id} />}
      </div>
      <ThumbBar opening={opening} order={order} state={state} headline={report.headline} />
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
