import { linkTo } from '../../app/addresses.ts';
import { useState } from 'react';
import type { BuildingFinding } from '../../domain/building/finding.ts';
import type { Plan } from '../../domain/building/plan.ts';
import {
  cannotClose,
  conditionsInWords,
  noFindings,
  suggestionInWords,
} from '../../domain/building/sentences.ts';
import { suggestFor } from '../../domain/building/suggest.ts';
import { severityWords } from '../../domain/simulate/outcome.ts';
import type { StatusWord } from '../../exporting/drawing/word-symbols.ts';
import { StatusMark } from '../face/Mark.tsx';
import { RuleLink } from '../parts/RuleWords.tsx';

export const statusOf: Readonly<Record<BuildingFinding['severity'], StatusWord>> = {
  severe: 'error',
  serious: 'caution',
  note: 'assumed',
};
const atOnce = 30;

interface Props {
  readonly plan: Plan;
  readonly findings: readonly BuildingFinding[];
  readonly chosen: BuildingFinding | undefined;
  readonly onChoose: (finding: BuildingFinding) => void;
}

export function FindingList({ plan, findings, chosen, onChoose }: Props) {
  const [shown, setShown] = useState(atOnce);
  if (findings.length === 0) return <p>{noFindings}</p>;
  return (
    <>
      <ol className="reasons building-findings">
        {findings.slice(0, shown).map((finding) => (
          <li
            key={`${finding.kind} ${finding.says}`}
            aria-current={finding === chosen ? 'true' : undefined}
            className={finding === chosen ? 'remark remark-accent' : undefined}
          >
            <Finding {...{ plan, finding, onChoose }} chosen={finding === chosen} />
          </li>
        ))}
      </ol>
      {shown < findings.length && (
        <button type="button" className="button" onClick={() => setShown(shown + atOnce)}>
          Show more ({findings.length - shown} left)
        </button>
      )}
    </>
  );
}

function Finding(props: {
  plan: Plan;
  finding: BuildingFinding;
  chosen: boolean;
  onChoose: (finding: BuildingFinding) => void;
}) {
  const { plan, finding, chosen, onChoose } = props;
  const { openings } = plan.project;
  const links = finding.openingIds.flatMap((id) => openings[id] ?? []).slice(0, 12);
  return (
    <>
      <StatusMark status={statusOf[finding.severity]}>{severityWords[finding.severity]}</StatusMark>
      <p>
        {finding.says} <RuleLink id={finding.ruleId} />
      </p>
      {finding.conditions.length > 0 && <p className="note">When: {conditionsInWords(finding.conditions)}</p>}
      <p className="row">
        {links.map((opening) => (
          <a key={opening.id} className="mark" href={linkTo('opening', opening.id)}>
            {opening.mark}
          </a>
        ))}
        {(finding.path.length > 0 || finding.openingIds.length > 0 || finding.spaceId !== null) && (
          <button
            type="button"
            className="button button-small"
            aria-pressed={chosen}
            onClick={() => onChoose(finding)}
          >
            Show in the drawing
          </button>
        )}
      </p>
      {finding.kind === 'exposed' && <Closing plan={plan} finding={finding} />}
    </>
  );
}

/** Worked out only when somebody asks: each proposal is run through the rules and the conditions first. */
function Closing({ plan, finding }: { plan: Plan; finding: BuildingFinding }) {
  const [open, setOpen] = useState(false);
  const [condition] = finding.conditions;
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>What would resolve it</summary>
      {open &&
        (finding.closing === null || condition === undefined ? (
          <p>{cannotClose}</p>
        ) : (
          <ul>
            {finding.closing.map((id) => {
              const opening = plan.project.openings[id];
              const edge = plan.edges.find((one) => one.opening.id === id);
              if (!opening || !edge) return null;
              return (
                <li key={id}>{suggestionInWords(opening.mark, suggestFor(plan.project, edge, condition))}</li>
              );
            })}
          </ul>
        ))}
    </details>
  );
}
