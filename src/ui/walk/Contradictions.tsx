import { linkTo } from '../../app/addresses.ts';
import type { FindingWords } from '../../domain/words/report.ts';
import { type FactKey, fieldInfo } from '../../domain/model/fields.ts';
import { StatusMark } from '../face/Mark.tsx';

interface Props {
  readonly findings: readonly FindingWords[];
  readonly onMend: (key: FactKey) => void;
}

/** Why something is refused, above the question, and the way to the answer that causes it. */
export function Contradictions({ findings, onMend }: Props) {
  if (findings.length === 0) return null;
  return (
    <section aria-label="Contradictions">
      <ul className="reasons">
        {findings.map((finding) => (
          <li key={finding.ruleId + finding.sentence} className="remark stack stack-tight">
            <StatusMark status={finding.refuses ? 'error' : 'caution'}>{finding.fieldLabel}</StatusMark>
            <p>
              {finding.sentence}{' '}
              <a className="mark step-link" href={linkTo('rules', finding.ruleId)}>
                {finding.ruleId}
              </a>
            </p>
            <button type="button" className="button self-start" onClick={() => onMend(finding.field)}>
              Answer again: {fieldInfo(finding.field).label}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
