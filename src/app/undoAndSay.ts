import { type AppStore, lastUndoable } from './store.ts';

/** Takes the last step back and says what it was; off the screen it would not be seen. */
export function undoAndSay(store: AppStore): void {
  const step = lastUndoable(store.getState().document.past);
  const result = store.getState().undo();
  if (!result.ok || !step) return;
  sayOnce(store, `Undone: ${step.command.label}.`);
  leaveWhatIsGone(store);
}

export function redoAndSay(store: AppStore): void {
  const step = store.getState().document.future.at(-1);
  const result = store.getState().redo();
  if (!result.ok || !step) return;
  sayOnce(store, `Done again: ${step.command.label}.`);
  leaveWhatIsGone(store);
}

/** One sentence of the kind at a time: ten presses of undo are no ten sentences. */
function sayOnce(store: AppStore, says: string): void {
  const { session, putAway, tell } = store.getState();
  for (const notice of session.notices) if (/^(Undone|Done again): /.test(notice.says)) putAway(notice.id);
  tell({ kind: 'told', says });
}

/** Nobody is left on the page of an opening that undo took away: the one worked on before it takes its place. */
function leaveWhatIsGone(store: AppStore): void {
  const { document, session, select, goTo } = store.getState();
  const { selectedId, page } = session;
  if (selectedId === null || Object.hasOwn(document.project.openings, selectedId)) return;
  const before = document.past
    .toReversed()
    .flatMap(({ command }) => command.edits.map((edit) => ('id' in edit ? edit.id : '')))
    .find((id) => Object.hasOwn(document.project.openings, id));
  if (before === undefined && page === 'opening') goTo('schedule');
  select(before ?? null);
}
