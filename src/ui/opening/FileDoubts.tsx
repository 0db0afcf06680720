import { rememberLast } from '../../app/rememberLast.ts';
import { doubtsAt, doubtsOf } from '../../domain/project/doubts.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import { useStore } from '../context.ts';

const doubts = rememberLast(doubtsOf);

/** What the file of the project held about this opening and could not be read, or cannot be right. */
export function FileDoubts({ project, opening }: { project: Project; opening: Opening }) {
  const store = useStore();
  const said = doubtsAt(doubts(project), opening.id);
  const mine = (project.setAside ?? []).filter((one) => one.openingId === opening.id);
  if (said.length === 0) return null;
  const dealtWith = () => {
    const value = (project.setAside ?? []).filter((one) => !mine.includes(one));
    store.getState().dispatch(`${opening.mark}: resolved what was set aside`, [{ kind: 'setAside', value }]);
  };
  return (
    <div className="message" role="note">
      <p>
        <strong>Check this against the file it came from:</strong>
      </p>
      <ul className="reasons">
        {said.map((says) => (
          <li key={says}>{says}</li>
        ))}
      </ul>
      {mine.length > 0 && (
        <button type="button" className="button button-small" onClick={dealtWith}>
          I have resolved what was set aside here
        </button>
      )}
    </div>
  );
}
