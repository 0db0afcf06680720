import { moveTo } from '../../app/addresses.ts';
import { useEffect, useRef, useState } from 'react';
import { orderedOpenings } from '../../app/order.ts';
import { reportFor } from '../../app/reports.ts';
import type { FieldGroup } from '../../domain/model/field.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import { useApp, useStore } from '../context.ts';
import { useDecision } from '../useDecisions.ts';
import { DecisionStateMark } from '../parts/DecisionStateMark.tsx';
import { ErrorPanel } from '../parts/ErrorPanel.tsx';
import { ReviewFold } from '../review/ReviewFold.tsx';
import { Photos } from '../photos/Photos.tsx';
import { ChooseByHand } from './ChooseByHand.tsx';
import { ConditionTable } from './ConditionTable.tsx';
import { DecisionHead, DecisionPanel } from './DecisionPanel.tsx';
import { FileDoubts } from './FileDoubts.tsx';
import { FloorDoubt } from './FloorDoubt.tsx';
import { focusField } from './FindingLinks.tsx';
import { OpeningDrawing } from './OpeningDrawing.tsx';
import { OpeningHead } from './OpeningHead.tsx';
import { OpeningHistory } from './OpeningHistory.tsx';
import { PathFindings } from './PathFindings.tsx';
import { Remarks } from './Remarks.tsx';
import { SpacesLeft } from './SpacesLeft.tsx';
import { SurveyForm } from './SurveyForm.tsx';

/** One opening: its survey on the left, what follows from it on the right; on a phone one below the other. */
export default function OpeningPage() {
  const store = useStore();
  const project = useApp((state) => state.document.project);
  const id = useApp((state) => state.session.selectedId);
  const opening = id === null ? undefined : project.openings[id];
  const [openGroups, setOpenGroups] = useState<ReadonlySet<FieldGroup>>(new Set<FieldGroup>(['door']));
  const onOpenGroup = (group: FieldGroup, open: boolean) =>
    setOpenGroups((before) => {
      const after = new Set(before);
      if (open) after.add(group);
      else after.delete(group);
      return after;
    });
  useNeighborKeys(project, opening);
  if (!opening) {
    return (
      <div className="sheet">
        <div className="sheet-body empty stack">
          <h1 tabIndex={-1}>This opening is not in the project</h1>
          <p>It may have been removed, or the address belongs to another project.</p>
          <button type="button" className="button" onClick={() => store.getState().goTo('schedule')}>
            Back to the schedule
          </button>
        </div>
      </div>
    );
  }
  return (
    <OpeningSheet
      key={opening.id}
      project={project}
      opening={opening}
      openGroups={openGroups}
      onOpenGroup={onOpenGroup}
    />
  );
}

function neighbors(project: Project, opening: Opening) {
  const order = orderedOpenings(project);
  const index = order.findIndex((one) => one.id === opening.id);
  return { before: order[index - 1], after: order[index + 1] };
}

/** Alt with a Page key goes to the opening before or after, and stays in the same field there. */
function useNeighborKeys(project: Project, opening: Opening | undefined) {
  const field = useRef<string | null>(null);
  const id = opening?.id;
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!event.altKey || !opening || (event.key !== 'PageDown' && event.key !== 'PageUp')) return;
      event.preventDefault();
      const { before, after } = neighbors(project, opening);
      const to = event.key === 'PageDown' ? after : before;
      if (!to) return;
      const here = document.activeElement;
      field.current = here?.closest<HTMLElement>('.fact-field')?.dataset['fact'] ?? '';
      // A text being typed is kept before its field goes away.
      if (here instanceof HTMLElement) here.blur();
      moveTo('opening', to.id);
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  }, [project, opening]);
  useEffect(() => {
    const wanted = field.current;
    field.current = null;
    if (wanted === null || id === undefined) return;
    if (wanted === '' || !focusField(wanted)) document.querySelector<HTMLElement>('main h1')?.focus();
  }, [id]);
}

interface SheetProps {
  readonly project: Project;
  readonly opening: Opening;
  readonly openGroups: ReadonlySet<FieldGroup>;
  readonly onOpenGroup: (group: FieldGroup, open: boolean) => void;
}

function OpeningSheet({ project, opening, openGroups, onOpenGroup }: SheetProps) {
  const { decision, state } = useDecision(opening.id);
  const report = reportFor(decision);
  const { before, after } = neighbors(project, opening);
  return (
    <div className="sheet">
      <div className="sheet-body stack">
        <OpeningHead project={project} opening={opening} before={before} after={after} />
        <FloorDoubt project={project} opening={opening} />
        <FileDoubts project={project} opening={opening} />
        <div className="opening-columns">
          <section aria-label="Survey">
            <ErrorPanel name="The survey">
              <SurveyForm
                project={project}
                opening={opening}
                decision={decision}
                openGroups={openGroups}
                onOpenGroup={onOpenGroup}
              />
            </ErrorPanel>
          </section>
          <section aria-label="Decision" id="decision" className="decision-column">
            <ErrorPanel name="The decision">
              <DecisionHead decision={decision} state={state} report={report} />
            </ErrorPanel>
            <ErrorPanel name="The drawing">
              <OpeningDrawing decision={decision} />
            </ErrorPanel>
            <ErrorPanel name="The photos">
              <Photos project={project} opening={opening} />
            </ErrorPanel>
            <ErrorPanel name="The choice by hand">
              <ChooseByHand project={project} opening={opening} decision={decision} />
            </ErrorPanel>
            <ErrorPanel name="The review">
              <ReviewFold opening={opening} decision={decision} />
            </ErrorPanel>
            <ErrorPanel name="Comments and questions">
              <Remarks opening={opening} />
            </ErrorPanel>
            <ErrorPanel name="The history">
              <OpeningHistory openingId={opening.id} />
            </ErrorPanel>
            <ErrorPanel name="The reasons">
              <DecisionPanel project={project} opening={opening} decision={decision} report={report}>
                <ErrorPanel name="What happens when">
                  <ConditionTable project={project} opening={opening} decision={decision} />
                </ErrorPanel>
                <ErrorPanel name="Egress">
                  <PathFindings project={project} opening={opening} />
                  <SpacesLeft project={project} opening={opening} />
                </ErrorPanel>
              </DecisionPanel>
            </ErrorPanel>
          </section>
        </div>
      </div>
      <div className="thumb-bar phone-only" role="status" aria-live="polite">
        <a className="button" href="#decision" onClick={jumpToDecision}>
          <DecisionStateMark state={state} />
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
