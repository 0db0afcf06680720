import type { Reason } from '../../domain/egress/reason.ts';

/** Lines of a computing, each with what it rests on. */
export function ReasonLines({ reasons }: { reasons: readonly Reason[] }) {
  if (reasons.length === 0) return null;
  return (
    <ul className="reasons">
      {reasons.map((reason) => (
        <li key={reason.says}>
          {reason.says}
          {reason.rests !== '' && <span className="note"> {reason.rests}.</span>}
        </li>
      ))}
    </ul>
  );
}
