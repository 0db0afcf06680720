import type { Decision } from '../../domain/decide/decision.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import { conditionInWords, conditionsAt } from '../../domain/review/conditionsAt.ts';
import { blocks } from '../../domain/sets/sets.ts';

interface Props {
  readonly project: Project;
  readonly opening: Opening;
  readonly decision: Decision;
}

/** Under what it was approved: the same lines stand in the set, the sequence of operation and the acceptance test. */
export function ApprovalConditions({ project, opening, decision }: Props) {
  const lines = conditionsAt(project, opening, decision).map(conditionInWords);
  if (lines.length === 0) return null;
  return (
    <section className="section" aria-label={blocks.condition}>
      <h3>{blocks.condition}</h3>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}
