import type { ReactNode } from 'react';
import type { Decision } from '../../domain/decide/decision.ts';
import type { DecisionReport } from '../../domain/words/report.ts';
import { type ShownState, shownStateWords } from '../../domain/words/states.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import { DeviceSymbol, FailModeSymbol, ReleaseSymbol, StatusMark } from '../face/Mark.tsx';
import { DecisionStateMark } from '../parts/DecisionStateMark.tsx';
import { ApprovalConditions } from './ApprovalConditions.tsx';
import { Demands } from './Demands.tsx';
import { Reasons } from './Reasons.tsx';
import { WaysForward } from './WaysForward.tsx';

/** What is recommended, in one look. */
export function DecisionHead(props: { decision: Decision; state: ShownState; report: DecisionReport }) {
  const { decision, state, report } = props;
  const { chosen } = decision;
  return (
    <div className="stack stack-tight decision-head">
      <DecisionStateMark state={state} large />
      <p className="note">{shownStateWords[state].means}</p>
      <h2 className="decision-name">{report.headline}</h2>
      {chosen && (
        <p className="row">
          <DeviceSymbol device={chosen.candidate.deviceId} decorative large />
          <FailModeSymbol failMode={chosen.candidate.failMode} />
          <ReleaseSymbol release={chosen.candidate.release} />
        </p>
      )}
      {decision.overridden && state !== 'forbidden' && (
        <StatusMark status="needsSignOff">Chosen by hand</StatusMark>
      )}
    </div>
  );
}

interface Props {
  readonly project: Project;
  readonly opening: Opening;
  readonly decision: Decision;
  readonly report: DecisionReport;
  /** Stands between what has to be done and why: what happens when. */
  readonly children?: ReactNode;
}

/** The decision from what to do down to what was ruled out; the caution stands under all of it. */
export function DecisionPanel({ project, opening, decision, report, children }: Props) {
  return (
    <div className="stack decision">
      {decision.state === 'none' && <WaysForward project={project} opening={opening} decision={decision} />}
      <ApprovalConditions project={project} opening={opening} decision={decision} />
      <Demands report={report} />
      {children}
      <Reasons project={project} opening={opening} decision={decision} report={report} />
      <p className="note caution-text">{report.caution}</p>
    </div>
  );
}
