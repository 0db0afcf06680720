import type { Decision } from '../../domain/decide/decision.ts';
import type { DecisionReport } from '../../domain/words/report.ts';
import { nothingElse } from '../../domain/words/why.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import { DeviceSymbol } from '../face/Mark.tsx';
import { ReasonList } from '../parts/RuleWords.tsx';
import { WhatWouldAdmit } from './WhatWouldAdmit.tsx';

interface Props {
  readonly project: Project;
  readonly opening: Opening;
  readonly decision: Decision;
  readonly report: DecisionReport;
}

/** Why it came out so: strength, points, what is open, what was ruled out, the facts it rests on. */
export function Reasons({ project, opening, decision, report }: Props) {
  const { chosen } = decision;
  return (
    <>
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
            <>
              <p>
                Runner-up: {report.runnerUp.name}. {report.runnerUp.why} {report.runnerUp.doubt}
              </p>
              <Carries head="To be signed for with it" lines={report.runnerUp.signOffs} />
              <Carries head="Cautions with it" lines={report.runnerUp.cautions} />
            </>
          ) : (
            <p>{nothingElse}</p>
          )}
          <details>
            <summary>Points {report.points} of 100</summary>
            <table className="schedule schedule-close schedule-folds">
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
                    <td data-head="Part">{line.part}</td>
                    <td data-head="Of 100" className="num">
                      {line.value}
                    </td>
                    <td data-head="Weight" className="num">
                      {line.weight}
                    </td>
                    <td data-head="Points" className="num">
                      {line.points}
                    </td>
                    <td data-head="Runner-up" className="num">
                      {line.runnerUpPoints}
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          </details>
          {report.preference.map((says) => (
            <p key={says} className="remark">
              {says}
            </p>
          ))}
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
          <summary>Facts relied on ({report.facts.length})</summary>
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
    </>
  );
}

/** What would come with the runner-up, folded: it is read by whoever thinks of taking it. */
function Carries({ head, lines }: { head: string; lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <details>
      <summary>
        {head} ({lines.length})
      </summary>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </details>
  );
}
