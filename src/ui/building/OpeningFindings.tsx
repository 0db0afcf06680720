import { linkTo } from '../../app/addresses.ts';
import { decisionsInBuilding } from '../../app/buildings.ts';
import { simulationFor } from '../../app/reports.ts';
import type { Plan } from '../../domain/building/plan.ts';
import { openingsInOrder } from '../../domain/model/project.ts';
import { severityWords } from '../../domain/simulate/outcome.ts';
import { StatusMark } from '../face/Mark.tsx';

/** What is wrong at single openings, whatever the building around them does. Notes stay on their own page. */
export function OpeningFindings({ plan }: { plan: Plan }) {
  const decisions = decisionsInBuilding(plan.project);
  const found = openingsInOrder(plan.project).flatMap((opening) => {
    const decision = decisions.get(opening.id);
    const { findings = [] } = (decision && simulationFor(plan.project, opening, decision)) ?? {};
    return findings.filter((one) => one.severity !== 'note').map((finding) => ({ opening, finding }));
  });
  if (found.length === 0) return null;
  return (
    <details>
      <summary>At single openings ({found.length})</summary>
      <ul className="reasons">
        {found.map(({ opening, finding }) => (
          <li key={opening.id + finding.says}>
            <p className="row">
              <a className="mark" href={linkTo('opening', opening.id)}>
                {opening.mark}
              </a>
              <StatusMark status={finding.severity === 'severe' ? 'error' : 'caution'}>
                {severityWords[finding.severity]}
              </StatusMark>
            </p>
            <p>{finding.says}</p>
          </li>
        ))}
      </ul>
    </details>
  );
}
