import type { DecisionReport } from '../../domain/words/report.ts';
import { gradeWords } from '../../domain/words/signOff.ts';
import { maybeNeeded } from '../../domain/words/maybe.ts';
import { StatusMark } from '../face/Mark.tsx';
import { ReasonList, RuleLink, RuleWords } from '../parts/RuleWords.tsx';

/** What the decision asks of people: to mend, to sign, to do, to buy, to beware. */
export function Demands({ report }: { report: DecisionReport }) {
  const notes = report.signOffs.filter((reason) => reason.grade === 'note');
  return (
    <>
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
          <SignOffList reasons={report.signOffs.filter((reason) => reason.grade !== 'note')} />
          {notes.length > 0 && (
            <details>
              <summary>Notes ({notes.length})</summary>
              <SignOffList reasons={notes} />
            </details>
          )}
        </section>
      )}

      {report.work.length > 0 && (
        <section className="section">
          <h3>Work required</h3>
          {report.work.map(({ trade, lines }) => (
            <div key={trade} className="work">
              <h4>{trade}</h4>
              <ul>
                {lines.map((line) => (
                  <li key={line.sentence}>
                    {line.sentence} <RuleLink id={line.ruleId} />
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
                  <td className="num">{item.quantityWords}</td>
                  <td>
                    {item.name}
                    {item.standard && <span className="soft"> · {item.standard}</span>}
                    {item.ruleId && ' '}
                    <RuleLink id={item.ruleId} />
                  </td>
                  <td>{item.trade}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}

      {report.maybes.length > 0 && (
        <section className="section">
          <h3>{maybeNeeded}</h3>
          <ul>
            {report.maybes.map((one) => (
              <li key={one.ruleId + one.sentence}>
                {one.sentence} <RuleLink id={one.ruleId} />
              </li>
            ))}
          </ul>
        </section>
      )}

      {report.cautions.length > 0 && (
        <section className="section">
          <h3>Cautions</h3>
          <ReasonList steps={report.cautions} />
        </section>
      )}
    </>
  );
}

function SignOffList({ reasons }: { reasons: DecisionReport['signOffs'] }) {
  if (reasons.length === 0) return null;
  return (
    <ul className="reasons">
      {reasons.map((reason) => (
        <li key={reason.sentence}>
          <StatusMark status={reason.grade === 'note' ? 'assumed' : 'needsSignOff'}>
            {gradeWords[reason.grade]}
          </StatusMark>
          <p>
            {reason.sentence} <RuleLink id={reason.ruleId} />
          </p>
        </li>
      ))}
    </ul>
  );
}
