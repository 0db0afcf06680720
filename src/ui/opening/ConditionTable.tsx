import { useId, useState } from 'react';
import { simulationFor } from '../../app/reports.ts';
import type { Decision } from '../../domain/decide/decision.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import { condition, conditionIds } from '../../domain/simulate/conditions.ts';
import { type OpeningFinding, type Outcome, severityWords } from '../../domain/simulate/outcome.ts';
import { noProblemFound, nothingToRun } from '../../domain/simulate/outcomeWords.ts';
import type { StatusWord } from '../../exporting/drawing/word-symbols.ts';
import { StateMark, StatusMark } from '../face/Mark.tsx';
import { wideAtFirst } from '../parts/wideAtFirst.ts';
import './conditions.css';

/** The opening in every condition: what happens on both sides, and under it what is wrong with that. */
export function ConditionTable(props: { project: Project; opening: Opening; decision: Decision }) {
  const { project, opening, decision } = props;
  const heading = useId();
  const [why, setWhy] = useState(false);
  const found = simulationFor(project, opening, decision);
  if (!found) {
    return (
      <section className="section" aria-labelledby={heading}>
        <h3 id={heading}>What happens when</h3>
        <p>{nothingToRun}</p>
      </section>
    );
  }
  const outcomes = conditionIds.map((id) => found.outcomes[id]);
  const running = outcomes.filter((one) => one.applies);
  const idle = outcomes.filter((one) => !one.applies);
  return (
    <section className="section" aria-labelledby={heading}>
      <h3 id={heading}>What happens when</h3>
      <FindingList findings={found.findings} />
      <details open={wideAtFirst()}>
        <summary>Condition by condition ({running.length})</summary>
        <div className="toolbar">
          <button type="button" className="button" aria-pressed={why} onClick={() => setWhy(!why)}>
            Say why
          </button>
          {found.provisional && <StatusMark status="provisional">Provisional decision</StatusMark>}
        </div>
        <table className="schedule schedule-close schedule-folds conditions" aria-labelledby={heading}>
          <thead>
            <tr>
              <th scope="col">Condition</th>
              <th scope="col">Entry</th>
              <th scope="col">Exit</th>
              <th scope="col">Latch</th>
              <th scope="col">Coil</th>
              <th scope="col">Alarm</th>
            </tr>
          </thead>
          <tbody>
            {running.map((outcome) => (
              <OutcomeRow key={outcome.condition} outcome={outcome} why={why} />
            ))}
          </tbody>
        </table>
      </details>
      {idle.length > 0 && (
        <details>
          <summary>Does not apply here ({idle.length})</summary>
          <ul>
            {idle.map((outcome) => (
              <li key={outcome.condition}>
                <strong>{condition(outcome.condition).name}</strong> — {outcome.says}
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}

function OutcomeRow({ outcome, why }: { outcome: Outcome; why: boolean }) {
  const { name, means } = condition(outcome.condition);
  // One hour of the day at a time; the sentence under it tells the other.
  const state = outcome.hours?.locked ?? outcome;
  return (
    <>
      <tr className={outcome.exit === 'blocked' ? 'condition-blocked' : undefined}>
        <th scope="row" title={means}>
          {name}
        </th>
        <td data-head="Entry">{state.entry !== 'none' && <StateMark state={state.entry} />}</td>
        <td data-head="Exit">
          <ExitMark outcome={outcome} />
        </td>
        <td data-head="Latch">
          {state.latched !== 'none' && (
            <StateMark state={state.latched === 'yes' ? 'latched' : 'notLatched'} />
          )}
        </td>
        <td data-head="Coil">
          {state.coil === 'yes' ? (
            <StateMark state="energized" />
          ) : (
            <span className="soft">{state.coil === 'no' ? 'No current' : 'No coil'}</span>
          )}
        </td>
        <td data-head="Alarm">
          {outcome.alarm ? <StateMark state="alarm" /> : <span className="soft">None</span>}
        </td>
      </tr>
      {why && (
        <tr className="condition-why">
          <td colSpan={6}>{outcome.says}</td>
        </tr>
      )}
    </>
  );
}

export function ExitMark({ outcome }: { outcome: Pick<Outcome, 'exit' | 'afterS'> }) {
  switch (outcome.exit) {
    case 'free':
      return <StateMark state="free" />;
    case 'after':
      return <StateMark state="delayed">After {outcome.afterS} s</StateMark>;
    case 'byStaff':
      return <StateMark state="byStaff" />;
    case 'blocked':
      return <StateMark state="blocked" />;
    case 'none':
      return null;
  }
}

const statusOf: Readonly<Record<OpeningFinding['severity'], StatusWord>> = {
  severe: 'error',
  serious: 'caution',
  note: 'assumed',
};

function FindingList({ findings }: { findings: readonly OpeningFinding[] }) {
  if (findings.length === 0) {
    return <p className="note">{noProblemFound}</p>;
  }
  return (
    <ul className="reasons" aria-label="Found while running the conditions">
      {findings.map((finding) => (
        <li key={finding.says}>
          <StatusMark status={statusOf[finding.severity]}>{severityWords[finding.severity]}</StatusMark>
          <p>{finding.says}</p>
        </li>
      ))}
    </ul>
  );
}
