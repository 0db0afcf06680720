import { linkTo } from '../../app/addresses.ts';
import type { ReasonInFull } from '../../exporting/sheets/reasons.ts';

/** Grade, sentence, and under it the rule with its sections and how it was read. */
export function ReasonsInFull({ reasons }: { reasons: readonly ReasonInFull[] }) {
  return (
    <ul className="reasons" aria-label="Why it needs a signature">
      {reasons.map((reason) => (
        <li key={reason.sentence} className="reason">
          <p>
            <strong>{reason.gradeWord}.</strong> {reason.sentence}
          </p>
          {reason.ruleId && (
            <p className="note">
              <a className="mark" href={linkTo('rules', reason.ruleId)}>
                {reason.ruleId}
              </a>{' '}
              {reason.cites.join('; ')} — {reason.confidence}
              {reason.note !== '' && `. ${reason.note}`}
            </p>
          )}
        </li>
      ))}
    </ul>
  );
}
