import type { Decision } from '../../domain/decide/decision.ts';
import type { DecisionReport } from '../../domain/decide/report.ts';
import { gradeWords } from '../../domain/decide/words.ts';
import { DeviceSymbol, FailModeSymbol, ReleaseSymbol, StatusMark } from '../face/Mark.tsx';
import type { Opening, Project } from '../../domain/model/project.ts';
import { DecisionStateMark } from '../parts/DecisionStateMark.tsx';
import { ReasonList, RuleWords } from '../parts/RuleWords.tsx';
import { WhatWouldAdmit } from './WhatWouldAdmit.tsx';

/** What is recommended, in one look. */
export function DecisionHead({ decision, report }: { decision: Decision; report: DecisionReport }) {
  const { chosen } = decision;
  return (
    <div className="stack stack-tight decision-head">
      <DecisionStateMark state={decision.state} large />
      <p className="note">{report.state.means}</p>
      <h2 className="decision-name">{report.headline}</h2>
      {chosen && (
        <p className="row">
          <DeviceSymbol device={chosen.candidate.deviceId} decorative large />
          <FailModeSymbol failMode={chosen.candidate.failMode} />
          <ReleaseSymbol release={chosen.candidate.release} />
        </p>
      )}
      {decision.overridden && <StatusMark status="needsSignOff">Chosen by hand</StatusMark>}
    </div>
  );
}

/** The decision with its reasons, from what to do down to what was ruled out. */
interface Props {
  readonly project: Project;
  readonly opening: Opening;
  readonly decision: Decision;
  readonly report: DecisionReport;
}

export function DecisionPanel({ project, opening, decision, report }: Props) {
  const { chosen } = decision;
  return (
    <div className="stack decision">
      {report.findings.length > 0 && (
        <section className="section">
          <h3>Contradictions in the survey</h3>
          {report.findings.map((finding) => (
            <div key={finding.ruleId + finding.sentence} className="remark">
              <StatusMark status={finding.refuses ? 'error' : 'caution'}>{finding.fieldLabel}</StatusMark>
              <RuleWords words={finding} />
            </div>
          ))}
        </section>
      )}

      {report.signOffs.length > 0 && (
        <section className="section">
          <h3>For the reviewer</h3>
          <ul className="reasons">
            {report.signOffs.map((reason) => (
              <li key={reason.sentence}>
                <StatusMark status={reason.grade === 'note' ? 'assumed' : 'needsSignOff'}>
                  {gradeWords[reason.grade]}
                </StatusMark>
                <p>
                  {reason.sentence}{' '}
                  {reason.ruleId && (
                    <a className="mark" href={`#/rules/${reason.ruleId}`}>
                      {reason.ruleId}
                    </a>
                  )}
                </p>
              </li>
            ))}
          </ul>
        </section>
      )}

      {report.work.length > 0 && (
        <section className="section">
          <h3>What has to be done</h3>
          {report.work.map(({ trade, lines }) => (
            <div key={trade} className="work">
              <h4>{trade}</h4>
              <ul>
                {lines.map((line) => (
                  <li key={line.sentence}>
                    {line.sentence} {line.ruleId && <span className="mark">{line.ruleId}</span>}
                  </li>
                ))}
              </ul>
            </div>
          ))}
        </section>
      )}

      {report.items.length > 0 && (
        <section className="section">
          <h3>Hardware</h3>
          <table className="schedule schedule-close">
            <thead>
              <tr>
                <th className="num">Qty</th>
                <th>Item</th>
                <th>By</th>
              </tr>
            </thead>
            <tbody>
              {report.items.map((item) => (
                <tr key={item.name}>
                  <td className="num">{item.quantity}</td>
                  <td>
                    {item.name}
                    {item.standard && <span className="soft"> · {item.standard}</span>}
                    {item.ruleId && <span className="mark"> {item.ruleId}</span>}
                  </td>
                  <td>{item.trade}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}

      {report.cautions.length > 0 && (
        <section className="section">
          <h3>Cautions</h3>
          <ReasonList steps={report.cautions} />
        </section>
      )}

      {report.strength && (
        <section className="section">
          <h3>Strength</h3>
          <p>{report.strength.sentence}</p>
          <details>
            <summary>Members</summary>
            <ul>
              {report.strength.members.map((member) => (
                <li key={member.name}>
                  <strong>{member.name}</strong> <span className="dim">{member.lbf}</span> — {member.says}
                </li>
              ))}
            </ul>
          </details>
        </section>
      )}

      {chosen && (
        <section className="section">
          <h3>Why this one</h3>
          {report.runnerUp ? (
            <p>
              Runner-up: {report.runnerUp.name}. {report.runnerUp.why}
            </p>
          ) : (
            <p>Nothing else is left to compare it with.</p>
          )}
          <details>
            <summary>Points {report.points} of 100</summary>
            <table className="schedule schedule-close">
              <thead>
                <tr>
                  <th>Part</th>
                  <th className="num">Of 100</th>
                  <th className="num">Weight</th>
                  <th className="num">Points</th>
                  <th className="num">Runner-up</th>
                </tr>
              </thead>
              <tbody>
                {report.score.map((line) => (
                  <tr key={line.part}>
                    <td>{line.part}</td>
                    <td className="num">{line.value}</td>
                    <td className="num">{line.weight}</td>
                    <td className="num">{line.points}</td>
                    <td className="num">{line.runnerUpPoints}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </details>
          {report.permits.length > 0 && (
            <details>
              <summary>Allowed, and not needed ({report.permits.length})</summary>
              <ReasonList steps={report.permits} />
            </details>
          )}
        </section>
      )}

      {report.open.length > 0 && (
        <section className="section">
          <details>
            <summary>Still open ({report.open.length})</summary>
            <ul className="reasons">
              {report.open.map((one) => (
                <li key={one.id}>
                  <p>
                    <strong>{one.name}</strong> waits for: {one.missing.join(', ') || 'a person’s answer'}
                  </p>
                  <ReasonList steps={one.because} />
                </li>
              ))}
            </ul>
          </details>
        </section>
      )}

      <section className="section">
        <details>
          <summary>Ruled out ({decision.rejected.length} arrangements)</summary>
          {report.rejected.map((device) => (
            <details key={device.deviceId} className="ruled-out">
              <summary>
                <DeviceSymbol device={device.deviceId} />
              </summary>
              {device.variants.map((variant) => (
                <div key={variant.id}>
                  <h4>{variant.name}</h4>
                  <ReasonList steps={variant.because} />
                  <WhatWouldAdmit
                    project={project}
                    opening={opening}
                    decision={decision}
                    candidateId={variant.id}
                  />
                </div>
              ))}
            </details>
          ))}
        </details>
        <details>
          <summary>Facts this rests on ({report.facts.length})</summary>
          <table className="schedule schedule-close">
            <tbody>
              {report.facts.map((fact) => (
                <tr key={fact.key}>
                  <td>{fact.label}</td>
                  <td>{fact.value}</td>
                  <td className={fact.standing === 'known' ? 'soft' : 'value-assumed'}>{fact.standing}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </details>
      </section>

      <p className="note caution-text">{report.caution}</p>
    </div>
  );
}
