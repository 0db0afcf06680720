import { useMemo } from 'react';
import type { Decision } from '../../domain/decide/decision.ts';
import { waysForward } from '../../domain/decide/whatWouldChange.ts';
import { noWayForward, wayInWords } from '../../domain/words/whatWouldChange.ts';
import type { Opening, Project } from '../../domain/model/project.ts';

interface Props {
  readonly project: Project;
  readonly opening: Opening;
  readonly decision: Decision;
}

/** Where no hardware works: the least work after which something would. */
export function WaysForward({ project, opening, decision }: Props) {
  const ways = useMemo(
    () => waysForward(project, opening, decision).map(wayInWords),
    [project, opening, decision],
  );
  return (
    <section className="section">
      <h3>What would make it work</h3>
      {ways.length === 0 && <p>{noWayForward(decision)}</p>}
      {ways.map((way) => (
        <div key={way.candidateId}>
          <h4>{way.name}</h4>
          <ul>
            {way.work.flatMap(({ trade, lines }) =>
              lines.map((line) => (
                <li key={line}>
                  <strong>{trade}:</strong> {line}
                </li>
              )),
            )}
          </ul>
        </div>
      ))}
    </section>
  );
}
