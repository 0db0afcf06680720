import { draftInWords, draftWords } from '../../domain/text/draftWords.ts';
import { useApp, useApplication } from '../context.ts';

/** What was typed into fields that are not on the screen now: it stays until somebody goes back or discards it. */
export function ParkedDrafts() {
  const drafts = useApp(({ session }) => session.drafts);
  const { drafts: desk } = useApplication();
  const parked = drafts.filter((one) => !one.isShown);
  if (parked.length === 0) return null;
  return (
    <div className="notices" role="status">
      {parked.map((draft) => (
        <div key={draft.place} className="message">
          <p>{draftInWords(draft)}</p>
          <a className="row-end" href={draft.href}>
            {draftWords.goTo}
            <span className="visually-hidden">: {draft.label}</span>
          </a>
          <button type="button" className="button button-quiet" onClick={() => desk.drop(draft.place)}>
            {draftWords.discard}
            <span className="visually-hidden">: {draft.label}</span>
          </button>
        </div>
      ))}
    </div>
  );
}
