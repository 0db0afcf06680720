import { useMemo } from 'react';
import { decisionFor, reportFor } from '../../app/decisions.ts';
import { orderedOpenings } from '../../app/derive.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import { useApp, useStore } from '../context.ts';
import { DecisionStateMark } from '../parts/DecisionStateMark.tsx';
import { ErrorPanel } from '../parts/ErrorPanel.tsx';
import { ReviewFold } from '../review/ReviewFold.tsx';
import { ChooseByHand } from './ChooseByHand.tsx';
import { ConditionTable } from './ConditionTable.tsx';
import { DecisionHead, DecisionPanel } from './DecisionPanel.tsx';
import { OpeningDrawing } from './OpeningDrawing.tsx';
import { OpeningHead } from './OpeningHead.tsx';
import { SurveyForm } from './SurveyForm.tsx';

/** One opening: its survey on the left, what follows from it on the right; on a phone one below the other. */
export function OpeningPage() {
  const store = useStore();
  const project = useApp((state) => state.document.project);
  const id = useApp((state) => state.session.selectedId);
  const opening = id === null ? undefined : project.openings[id];
  if (!opening) {
    return (
      <div className="sheet">
        <div className="sheet-body empty stack">
          <h1>This opening is not in the project</h1>
          <p>It may have been removed, or the address is from another project.</p>
          <button type="button" className="button" onClick={() => store.getState().goTo('schedule')}>
            Back to the schedule
          </button>
        </div>
      </div>
    );
  }
  return <OpeningSheet key={opening.id} project={project} opening={opening} />;
}

function OpeningSheet({ project, opening }: { project: Project; opening: Opening }) {
  const decision = decisionFor(project, opening);
  const report = reportFor(project, opening);
  const neighbours = useMemo(() => {
    const order = orderedOpenings(project);
    const index = order.findIndex((one) => one.id === opening.id);
    return { before: order[index - 1], after: order[index + 1] };
  }, [project, opening.id]);
  return (
    <div className="sheet">
      <div className="sheet-body stack">
        <OpeningHead
          project={project}
          opening={opening}
          before={neighbours.before}
          after={neighbours.after}
        />
        <div className="opening-columns">
          <section aria-label="Survey">
            <ErrorPanel name="The survey">
              <SurveyForm project={project} opening={opening} />
            </ErrorPanel>
          </section>
          <section aria-label="Decision" id="decision" className="decision-column">
            <ErrorPanel name="The decision">
              <DecisionHead decision={decision} report={report} />
              <ChooseByHand project={project} opening={opening} decision={decision} />
            </ErrorPanel>
            <ErrorPanel name="The review">
              <ReviewFold opening={opening} decision={decision} />
            </ErrorPanel>
            <ErrorPanel name="What happens when">
              <ConditionTable project={project} opening={opening} />
            </ErrorPanel>
            <ErrorPanel name="The drawing">
              <OpeningDrawing decision={decision} />
            </ErrorPanel>
            <ErrorPanel name="The reasons">
              <DecisionPanel project={project} opening={opening} decision={decision} report={report} />
            </ErrorPanel>
          </section>
        </div>
      </div>
      <div className="thumb-bar phone-only" role="status" aria-live="polite">
        <a className="button" href="#decision" onClick={jumpToDecision}>
          <DecisionStateMark state={decision.state} />
          <span>{report.headline}</span>
        </a>
      </div>
    </div>
  );
}

/** The address after # belongs to the pages; a jump within the page must not change it. */
function jumpToDecision(event: { preventDefault: () => void }) {
  event.preventDefault();
  document.getElementById('decision')?.scrollIntoView({ block: 'start' });
}
