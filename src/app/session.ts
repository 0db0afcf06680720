import type { Command } from '../domain/commands/command.ts';
import { newProject } from '../domain/model/newProject.ts';
import type { Project, SetAside } from '../domain/model/project.ts';
import { createAutosave } from '../storage/autosave.ts';
import type { Timers } from '../storage/timers.ts';
import { createDatabase, type Database } from '../storage/database.ts';
import { downloadFile, fileOf, type FileToSave, openFile } from '../storage/fileAccess.ts';
import { type Result, storageProblemInWords } from '../storage/problems.ts';
import {
  type BackupSummary,
  createProjectStore,
  type Loaded,
  type ProjectSummary,
} from '../storage/projectStore.ts';
import {
  browserChannel,
  browserLocks,
  type Channel,
  createTabGuard,
  type Locks,
  type TabGuard,
} from '../storage/tabGuard.ts';
import { type Clock, type NewId, randomIds, systemClock } from './clock.ts';
import { firstProject } from './firstProject.ts';
import { watchLeaving } from './leaving.ts';
import { createPreferences, type PreferenceBox } from './preferences.ts';
import { type AppStore, createAppStore } from './store.ts';

export type { BackupSummary, ProjectSummary } from '../storage/projectStore.ts';

export interface AppNeeds {
  readonly database?: Database;
  readonly clock?: Clock;
  readonly ids?: NewId;
  readonly locks?: Locks | undefined;
  readonly channel?: (projectId: string) => Channel | undefined;
  readonly preferences?: PreferenceBox;
  readonly timers?: Timers;
  readonly page?: Window;
  readonly firstProject?: (ids: NewId) => Promise<Project>;
}

/** Either the wanted thing, or one sentence for the user. */
export type Told<T = object> = ({ readonly ok: true } & T) | { readonly ok: false; readonly says: string };

export interface App {
  readonly store: AppStore;
  readonly preferences: PreferenceBox;
  /** Ids for new floors, spaces and openings; works where `crypto.randomUUID` is missing. */
  readonly newId: NewId;
  /** What time it is; screens ask here, so that a test can say. */
  readonly clock: Clock;
  /** Opens the last project, or the demo where nothing is stored. Until it ends, `session.ready` is false. */
  readonly start: () => Promise<void>;
  readonly flush: () => Promise<void>;
  /** Flushes and lets go of the project; for tests and for replacing the app. */
  readonly close: () => Promise<void>;

  readonly copyToSave: () => FileToSave;
  readonly downloadCopy: () => void;
  readonly openFile: (file: Pick<Blob, 'arrayBuffer'>) => Promise<Told>;

  readonly listProjects: () => Promise<Told<{ readonly projects: readonly ProjectSummary[] }>>;
  readonly openProject: (id: string) => Promise<Told>;
  readonly createProject: (name: string) => Promise<Told>;
  readonly removeProject: (id: string) => Promise<Told>;
  readonly listBackups: (projectId?: string) => Promise<Told<{ readonly backups: readonly BackupSummary[] }>>;
  readonly restoreBackup: (backupId: number) => Promise<Told>;
  readonly listCommands: () => Promise<Told<{ readonly commands: readonly Command[] }>>;
  /** The user has seen the damaged parts; they stay in the backups only. */
  readonly forgetSetAside: () => void;
}

const otherWindow =
  'This project is open in another window, so it can only be read here. It can be edited here as soon as the other window is closed.';

export function createApp(needs: AppNeeds = {}): App {
  const clock = needs.clock ?? systemClock;
  const ids = needs.ids ?? randomIds;
  const database = needs.database ?? createDatabase();
  const locks = 'locks' in needs ? needs.locks : browserLocks();
  const channelFor = needs.channel ?? browserChannel;
  const preferences = needs.preferences ?? createPreferences();
  const projects = createProjectStore(database, clock);
  const tabId = ids();

  const store = createAppStore({
    project: newProject(ids(), 'New project'),
    clock,
    ids,
    by: () => preferences.get('yourName'),
    onCommand: (command, project, joinsLast) => autosave.changed(project, command, joinsLast),
    ready: false,
  });
  const shown = () => store.getState().document.project;

  let guard: TabGuard | undefined;
  /** What this window last read or wrote; null until the project is stored. */
  let revision: number | null = null;
  let setAside: readonly SetAside[] = [];
  /** The document of the last saved copy: leaving it unsaved loses nothing. */
  let copied: Project | undefined;

  const autosave = createAutosave<Project, Command>({
    write: async (project, commands) => {
      const written = await projects.save({ project, commands, after: revision, setAside });
      if (written.ok && project.id === shown().id) {
        revision = written.revision;
        guard?.tellSaved(written.revision);
      }
      return written;
    },
    onState: (saving) => store.getState().setSaving(saving),
    ...(needs.timers ? { timers: needs.timers } : {}),
  });

  database.onReplaced(async () => {
    await autosave.flush();
    autosave.stop(storageProblemInWords({ kind: 'databaseReplaced' }));
  });

  function show(loaded: Loaded): void {
    revision = loaded.revision;
    setAside = loaded.setAside;
    store.getState().replaceProject(loaded.project);
    preferences.set('lastProjectId', loaded.project.id);
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

  /** The guard of a project, once it is known whether this window may write. */
  function standGuard(id: string): Promise<{ readonly guard: TabGuard; readonly role: 'writer' | 'reader' }> {
    return new Promise((resolve) => {
      let decided = false;
      const made: TabGuard = createTabGuard({
        projectId: id,
        tabId,
        locks,
        channel: channelFor(id),
        ...(needs.timers ? { timers: needs.timers } : {}),
        onRole: (role) => {
          if (decided) {
            void inTurn(() => (guard === made ? changeRole(role) : Promise.resolve()));
            return;
          }
          decided = true;
          // A role may be known before `made` is assigned.
          queueMicrotask(() => resolve({ guard: made, role }));
        },
        onSaved: (saved) => {
          void inTurn(() => (guard === made ? follow(saved) : Promise.resolve()));
        },
      });
    });
  }

  async function changeRole(role: 'writer' | 'reader'): Promise<void> {
    if (role === 'reader') {
      await autosave.flush();
      if (autosave.state().kind !== 'readOnly') autosave.stop(otherWindow);
      return;
    }
    // The other window may have saved after we last looked.
    const loaded = await projects.load(shown().id);
    const neverStored = !loaded.ok && loaded.problem.kind === 'noSuchProject' && revision === null;
    if (!loaded.ok && !neverStored) {
      autosave.stop(storageProblemInWords(loaded.problem));
      return;
    }
    if (loaded.ok && loaded.revision !== revision) show(loaded);
    autosave.begin();
    if (neverStored) autosave.changed(shown());
    store.getState().tell({
      kind: 'told',
      says: 'The other window was closed; this project can be edited here now.',
    });
  }

  async function follow(saved: number): Promise<void> {
    if (guard?.role() === 'writer' || autosave.unsaved() || saved === revision) return;
    const loaded = await projects.load(shown().id);
    if (loaded.ok) show(loaded);
  }

  /** Calls that change which project is shown wait for one another. */
  let turn: Promise<unknown> = Promise.resolve();
  function inTurn<T>(work: () => Promise<T>): Promise<T> {
    const mine = turn.then(work, work);
    turn = mine.catch(() => undefined);
    return mine;
  }

  /** Work that would be lost with this page: typed here, not in the database and in no saved copy. */
  function unsavedWork(): boolean {
    const { past, future } = store.getState().document;
    return autosave.unsaved() && past.length + future.length > 0 && copied !== shown();
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

  async function letGo(): Promise<void> {
    autosave.replaced();
    const before = guard;
    guard = undefined;
    await before?.release();
  }

  /** Shows a stored project; `fresh` stands in when it is not stored yet. */
  async function enter(id: string, fresh?: Project): Promise<Told> {
    const before = guard;
    const stood = await standGuard(id);
    const loaded = await projects.load(id);
    const isNew = !loaded.ok && loaded.problem.kind === 'noSuchProject' && fresh !== undefined;
    if (!loaded.ok && !isNew) {
      await stood.guard.release();
      return { ok: false, says: storageProblemInWords(loaded.problem) };
    }
    autosave.replaced();
    guard = stood.guard;
    await before?.release();
    if (loaded.ok) {
      show(loaded);
      announce(loaded);
    } else if (fresh) show({ project: fresh, revision: 0, migrated: [], setAside: [] });
    if (!loaded.ok) revision = null;
    if (stood.role === 'reader') autosave.stop(otherWindow);
    else {
      autosave.begin();
      if (isNew) {
        autosave.changed(shown());
        await autosave.flush();
      }
    }
    return { ok: true };
  }

  /** The database is out of reach: the work stays in memory, saving is tried again, and the screen says so. */
  async function workInMemory(project: Project, aside: readonly SetAside[] = []): Promise<void> {
    await letGo();
    revision = null;
    setAside = aside;
    store.getState().replaceProject(project);
    autosave.begin();
    autosave.changed(project);
    // Tried at once, so that the warning stands there before anything is typed.
    await autosave.flush();
  }

  const reenter = async (work: () => Promise<Told>): Promise<Told> => {
    const left = await leave();
    return left.ok ? work() : left;
  };

  async function begin(): Promise<void> {
    const opened = await database.open();
    if (!opened.ok && opened.problem.kind !== 'noDatabase') {
      autosave.stop(storageProblemInWords(opened.problem));
      return;
    }
    const listed = await projects.list();
    const make = () => (needs.firstProject ?? firstProject)(ids);
    if (!listed.ok) {
      // An id of its own, so that it can never be taken for a project that is stored but unreadable now.
      const project = { ...(await make()), id: ids() };
      await workInMemory(project);
      return;
    }
    const last = preferences.get('lastProjectId');
    const inOrder = listed.projects.toSorted((a, b) => Number(b.id === last) - Number(a.id === last));
    for (const { id } of inOrder) {
      // oxlint-disable-next-line no-await-in-loop -- one after the other: the first that can be read is shown
      const entered = await enter(id);
      if (entered.ok) return;
      store.getState().tell({ kind: 'problem', says: entered.says });
    }
    const project = inOrder.length === 0 ? await make() : newProject(ids(), 'New project');
    const entered = await enter(project.id, project);
    if (!entered.ok) await workInMemory({ ...project, id: ids() });
  }

  let stopWatching: () => void = () => undefined;
  const inWords = <T>(result: Result<T>): Told<T> =>
    result.ok ? result : { ok: false, says: storageProblemInWords(result.problem) };

  return {
    store,
    preferences,
    newId: ids,
    clock,
    start: () =>
      inTurn(async () => {
        stopWatching = watchLeaving(
          {
            flush: autosave.flush,
            unsaved: unsavedWork,
            gone: () => {
              void autosave.flush().then(() => guard?.release());
            },
          },
          needs.page,
        );
        await begin();
        store.getState().setReady(true);
      }),
    flush: autosave.flush,
    close: () =>
      inTurn(async () => {
        await autosave.flush();
        stopWatching();
        await letGo();
        database.close();
      }),

    copyToSave: () => fileOf(shown(), clock()),
    downloadCopy: () => {
      downloadFile(fileOf(shown(), clock()));
      copied = shown();
    },
    openFile: (file) =>
      inTurn(() =>
        reenter(async () => {
          const read = await openFile(file);
          if (!read.ok) return read;
          const { project } = read.opened;
          const current = project.id === shown().id ? guard?.role() : undefined;
          const stood = current === undefined ? await standGuard(project.id) : undefined;
          if ((current ?? stood?.role) === 'reader') {
            await stood?.guard.release();
            return {
              ok: false,
              says: 'This project is open in another window. Close that window before opening a file of it; nothing was changed.',
            };
          }
          const added = await projects.add(read.opened, read.raw);
          await stood?.guard.release();
          if (!added.ok) {
            if (added.problem.kind !== 'noDatabase') {
              return { ok: false, says: storageProblemInWords(added.problem) };
            }
            await workInMemory(project, read.opened.setAside);
            announce(read.opened);
            return { ok: true };
          }
          await letGo();
          const entered = await enter(project.id);
          if (entered.ok && read.opened.migrated.length > 0) announce({ ...read.opened, setAside: [] });
          return entered;
        }),
      ),

    listProjects: async () => inWords(await projects.list()),
    openProject: (id) =>
      inTurn(async () => {
        // Asking for a lock that this window holds already would make it a reader of its own project.
        if (guard && id === shown().id) return { ok: true };
        return reenter(() => enter(id));
      }),
    createProject: (name) =>
      inTurn(() =>
        reenter(() => {
          const project = newProject(ids(), name.trim() || 'New project');
          return enter(project.id, project);
        }),
      ),
    removeProject: (id) =>
      inTurn(async () => {
        const isShown = id === shown().id;
        if (isShown) {
          if (guard?.role() === 'reader') return { ok: false, says: otherWindow };
          await autosave.flush();
        }
        const removed = await projects.remove(id);
        if (!removed.ok) return inWords(removed);
        if (isShown) {
          await letGo();
          await begin();
        }
        return { ok: true };
      }),
    listBackups: async (projectId) => inWords(await projects.listBackups(projectId)),
    restoreBackup: (backupId) =>
      inTurn(() =>
        reenter(async () => {
          if (guard?.role() === 'reader') return { ok: false, says: otherWindow };
          const restored = await projects.restore(backupId);
          if (!restored.ok) return inWords(restored);
          await letGo();
          return enter(restored.project.id);
        }),
      ),
    listCommands: async () => inWords(await projects.listCommands(shown().id)),
    forgetSetAside: () => {
      setAside = [];
      autosave.changed(shown());
    },
  };
}
