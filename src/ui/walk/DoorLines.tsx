import { useMemo } from 'react';
import type { Decision } from '../../domain/decide/decision.ts';
import type { FactKey } from '../../domain/model/fields.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import { atTheDoor, atTheDoorWords } from '../../domain/survey/atTheDoor.ts';

interface Props {
  readonly project: Project;
  readonly opening: Opening;
  readonly decision: Decision;
  readonly onAsk: (key: FactKey) => void;
}

/** Nothing fits, or the survey contradicts itself: three lines while one still stands before the door. */
export function DoorLines({ project, opening, decision, onAsk }: Props) {
  const said = useMemo(() => atTheDoor(project, opening, decision), [project, opening, decision]);
  if (!said) return null;
  return (
    <section className="section door-lines" aria-label="At the door">
      <dl>
        <div>
          <dt>{atTheDoorWords.rulesOut}</dt>
          <dd>{said.rulesOut}</dd>
        </div>
        <div>
          <dt>{atTheDoorWords.cheapest}</dt>
          <dd>{said.cheapest}</dd>
        </div>
        {said.lookAt.length > 0 && (
          <div>
            <dt>{atTheDoorWords.lookAt}</dt>
            {said.lookAt.map(({ key, says }) => (
              <dd key={key} className="row">
                <span>{says}</span>
                <button type="button" className="button" onClick={() => onAsk(key)}>
                  Answer again
                </button>
              </dd>
            ))}
          </div>
        )}
      </dl>
    </section>
  );
}
