import type { ReasonInFull } from '../../exporting/sheets/reasons.ts';

/** On paper: grade, sentence, and under it the rule with its sections and editions. */
export function Reasons({ reasons }: { reasons: readonly ReasonInFull[] }) {
  return (
    <ul className="paper-reasons">
      {reasons.map((reason) => (
        <li key={reason.sentence}>
          <strong>{reason.gradeWord}.</strong> {reason.sentence}{' '}
          {reason.grade === 'note' ? (
            <span className="mark">{reason.ruleId}</span>
          ) : (
            <div className="source">{reason.source}</div>
          )}
        </li>
      ))}
    </ul>
  );
}
