import type { Project, SetAside } from '../../domain/model/project.ts';
import { samePosition } from '../../storage/copy/position.ts';
import {
  isOutOfReach,
  type Result,
  type StorageProblem,
  storageProblemInWords,
} from '../../storage/problems.ts';
import type { Loaded } from '../../storage/projectStore.ts';
import type { TabGuard } from '../../storage/tabGuard.ts';
import { type Found, reconcile } from '../reconcile.ts';
import { storedAt } from '../standing.ts';
import { fromCopy } from '../wholeCopy.ts';
import { type Guarding, otherWindow, type Role, type Stood } from './guarding.ts';
import type { Kit, Told } from './kit.ts';
import type { Writing } from './writing.ts';

interface Entering {
  /** Stands in when the project is not stored yet. */
  readonly fresh?: Project;
  /** The database is known to be out of reach: the second copy is asked alone. */
  readonly without?: StorageProblem;
}

export type Entrance = ReturnType<typeof createEntrance>;

/** One project takes the place of another on the screen, and nobody is taken away from unsaved work. */
export function createEntrance(
  kit: Kit,
  { autosave, log, changedWhole }: Writing,
  guards: Guarding,
  /** A file holds the project as it is. */
  isCopied: (project: Project) => boolean,
) {
  const { clock, copies, drafts, journal, known, preferences, projects, shown, standing, store } = kit;

  function show(loaded: Loaded): void {
    standing.move({ kind: 'opened', at: loaded.position, setAside: loaded.setAside });
    put(loaded.project);
  }

  function put(project: Project): void {
    store.getState().replaceProject(project);
    preferences.set('lastProjectId', project.id);
  }

  function announce(loaded: Pick<Loaded, 'migrated' | 'setAside'>): void {
    const { tell } = store.getState();
    if (loaded.migrated.length > 0) {
      const steps = loaded.migrated.join(', ');
      tell({
        kind: 'migrated',
        says: `This project was brought up to date: ${steps}. The old state is kept in the backups once you save.`,
      });
    }
    if (loaded.setAside.length > 0) {
      const places = loaded.setAside.map((one) => one.where).join('; ');
      tell({
        kind: 'setAside',
        says: `Some entries could not be read and were set aside, with all they contained: ${places}.`,
        setAside: loaded.setAside,
      });
    }
  }

  async function changeRole(role: Role): Promise<void> {
    if (role === 'reader') {
      await autosave.flush();
      log.stop();
      if (autosave.state().kind !== 'readOnly') autosave.stop(otherWindow);
      return;
    }
    // The other window may have saved after we last looked, or been closed before it could.
    const found = await reconcile(shown().id, { projects, copies, journal });
    if (!found.ok && isOutOfReach(found.problem)) {
      const entered = await enter(shown().id, { without: found.problem });
      if (entered.ok) return;
    }
    const neverStored = !found.ok && found.problem.kind === 'noSuchProject' && storedAt(standing) === null;
    if (!found.ok && !neverStored) {
      autosave.stop(storageProblemInWords(found.problem));
      return;
    }
    if (found.ok && !samePosition(found.loaded.position, standing.now)) show(found.loaded);
    await log.begin(shown().id, found.ok ? found.kept : undefined);
    // The other window may have been closed with something typed in it.
    drafts.open(shown().id);
    autosave.begin();
    if (neverStored) changedWhole();
    if (found.ok && found.says !== '') store.getState().tell({ kind: 'problem', says: found.says });
    store.getState().tell({
      kind: 'told',
      says: 'The other window was closed; this project can be edited here now.',
    });
  }

  async function follow(saved: number): Promise<void> {
    if (
      guards.current()?.role() === 'writer' ||
      autosave.unsaved() ||
      saved <= (storedAt(standing)?.revision ?? 0)
    )
      return;
    const loaded = await projects.load(shown().id);
    if (loaded.ok) show(loaded);
  }

  /** Work that would be lost with this page: typed here, not in the database and in no saved copy. */
  function unsavedWork(): boolean {
    const { past, future } = store.getState().document;
    return autosave.unsaved() && past.length + future.length > 0 && !isCopied(shown());
  }

  /** Nobody may be taken away from unsaved work. */
  async function leave(): Promise<Told> {
    await autosave.flush();
    if (unsavedWork()) {
      return {
        ok: false,
        says: 'The last edits of this project are not saved. Save a copy to a file first, then try again.',
      };
    }
    return { ok: true };
  }

  const letGo = (): Promise<void> => takePlace(undefined);

  /** Shows a stored project, out of its second copy where the database is out of reach. */
  async function enter(id: string, { fresh, without }: Entering = {}): Promise<Told> {
    const stood = await guards.standFor(id);
    const found: Result<Found> = without
      ? { ok: false, problem: without }
      : stood.role === 'writer'
        ? await reconcile(id, { projects, copies, journal })
        : await onlyRead(id);
    if (!found.ok && (without || isOutOfReach(found.problem))) {
      const entered = await enterFromCopy(id, stood, found.problem);
      if (entered.ok || without) return entered;
    }
    const isNew = !found.ok && found.problem.kind === 'noSuchProject' && fresh !== undefined;
    if (!found.ok && !isNew) {
      await guards.leaveBe(stood);
      return { ok: false, says: storageProblemInWords(found.problem) };
    }
    await takePlace(stood.guard);
    if (found.ok) {
      show(found.loaded);
      announce(found.loaded);
      if (found.says !== '') store.getState().tell({ kind: 'problem', says: found.says });
      noteKnown(found.loaded);
    } else if (fresh) {
      standing.move({ kind: 'startedNew', setAside: [] });
      put(fresh);
    }
    if (stood.role === 'reader') autosave.stop(otherWindow);
    else {
      if (found.ok) await log.begin(id, found.kept);
      else await log.begin(id, { ...standing.now, lines: 0 });
      autosave.begin();
      if (isNew) {
        changedWhole();
        await autosave.flush();
      }
    }
    return { ok: true };
  }

  /** The project under this guard takes the place of the one before. */
  async function takePlace(next: TabGuard | undefined): Promise<void> {
    autosave.replaced();
    log.stop();
    await guards.take(next);
  }

  async function enterFromCopy(id: string, stood: Stood, because: StorageProblem): Promise<Told> {
    const found = await fromCopy(id, { copies, journal });
    if (!found.ok) {
      await guards.leaveBe(stood);
      return { ok: false, says: storageProblemInWords(found.problem) };
    }
    await takePlace(stood.guard);
    const writes = isOutOfReach(because) && stood.role === 'writer';
    const { position: at, setAside } = found.loaded;
    standing.move({ kind: 'openedFromCopy', at, setAside, writes, path: found.path, done: found.done });
    put(found.loaded.project);
    announce(found.loaded);
    noteKnown(found.loaded);
    if (!isOutOfReach(because)) autosave.stop(storageProblemInWords(because));
    else if (stood.role === 'reader') autosave.stop(otherWindow);
    else {
      await log.begin(id, undefined);
      autosave.changed({ project: found.loaded.project, position: at });
      autosave.beginFailing(storageProblemInWords({ kind: 'onlyInCopy', because }));
    }
    if (found.refused !== '') {
      store.getState().tell({ kind: 'problem', says: `An edit no longer fit: ${found.refused}` });
    }
    return { ok: true };
  }

  async function onlyRead(id: string): Promise<Result<Found>> {
    const loaded = await projects.load(id);
    return loaded.ok ? { ok: true, loaded, kept: undefined, says: '' } : loaded;
  }

  /** The database fell behind what was said to be saved, and no second copy could make it good. */
  function noteKnown({ project, position }: Loaded): void {
    const before = known.of(project.id);
    if (before && before.revision > position.revision) {
      store.getState().tell({
        kind: 'problem',
        says: `“${project.name}” was saved here with ${before.revision} edits, and the browser has only the state after ${position.revision}. Look at the backups on the Files page and at the last copy you saved to a file before you go on.`,
      });
    }
    known.note(project.id, {
      name: project.name,
      revision: position.revision,
      savedAt: before?.savedAt ?? clock(),
    });
  }

  /** The database is out of reach: the work stays in memory, saving is tried again, and the screen says so. */
  async function workInMemory(
    project: Project,
    because: StorageProblem,
    aside: readonly SetAside[] = [],
  ): Promise<void> {
    await letGo();
    standing.move({ kind: 'startedNew', setAside: aside });
    store.getState().replaceProject(project);
    await log.begin(project.id, { ...standing.now, lines: 0 });
    autosave.changed({ project, position: standing.now });
    // The warning stands there before anything is typed.
    autosave.beginFailing(storageProblemInWords(because));
  }

  const reenter = async <T = object>(work: () => Promise<Told<T>>): Promise<Told<T>> => {
    store.getState().setBusy(true);
    try {
      const left = await leave();
      return left.ok ? await work() : left;
    } finally {
      store.getState().setBusy(false);
    }
  };

  const enterAgain = (id: string): Promise<Told> =>
    guards.current() && id === shown().id ? Promise.resolve({ ok: true }) : enter(id);

  return { enter, enterAgain, reenter, letGo, workInMemory, announce, unsavedWork, changeRole, follow };
}
