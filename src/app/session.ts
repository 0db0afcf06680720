import type { Command } from '../domain/commands/command.ts';
import { picturesMissing } from '../domain/survey/photos.ts';
import { counted } from '../domain/text/counted.ts';
import { newProject } from '../domain/model/newProject.ts';
import type { Project, SetAside } from '../domain/model/project.ts';
import { createAutosave } from '../storage/autosave.ts';
import type { Timers } from '../storage/timers.ts';
import { createDatabase, type Database, type Edition } from '../storage/database.ts';
import { createDraftBox, type DraftBox } from '../storage/drafts.ts';
import { createJournal } from '../storage/copy/journal.ts';
import { createKnownProjects } from '../storage/copy/known.ts';
import { type Position, samePosition } from '../storage/copy/position.ts';
import { type Answer, createSecondCopy, type SecondCopy } from '../storage/copy/secondCopy.ts';
import type { FileToSave, OpenedFile } from '../storage/fileAccess.ts';
import {
  isOutOfReach,
  type Result,
  type StorageProblem,
  storageProblemInWords,
} from '../storage/problems.ts';
import {
  type BackupSummary,
  createProjectStore,
  type Loaded,
  type ProjectSummary,
} from '../storage/projectStore.ts';
import { createPhotoStore } from '../storage/photoStore.ts';
import {
  browserChannel,
  browserLocks,
  type Channel,
  createTabGuard,
  type Locks,
  type TabGuard,
} from '../storage/tabGuard.ts';
import { type Clock, type NewId, randomIds, systemClock } from './clock.ts';
import { createDraftDesk, type DraftDesk } from './draftDesk.ts';
import { firstProject } from './firstProject.ts';
import { watchLeaving } from './leaving.ts';
import { createLineLog } from './lineLog.ts';
import { withoutProject } from '../domain/grid/viewBox.ts';
import { createPreferences, type PreferenceBox } from './preferences.ts';
import { createPhotoDesk, type PhotoDesk } from './photoDesk.ts';
import { rejoin } from './detached.ts';
import type { Meeting, TakeHow } from './meeting.ts';
import { type Found, reconcile } from './reconcile.ts';
import { fromCopy, wholeOf } from './wholeCopy.ts';
import { atFirst, type Standing, type StandingEvent, step, storedAt } from './standing.ts';
import { type AcceptedHow, type AppStore, createAppStore } from './store.ts';
import type { ShrinkPicture } from './shrinkPicture.ts';
import { createSignerBox, type SignerBox } from './signerBox.ts';
import { whereKept } from './whereKept.ts';

export type { BackupSummary, ProjectSummary } from '../storage/projectStore.ts';

export interface AppNeeds {
  readonly database?: Database;
  readonly copies?: SecondCopy;
  readonly drafts?: DraftBox;
  readonly clock?: Clock;
  readonly ids?: NewId;
  readonly locks?: Locks | undefined;
  readonly channel?: (projectId: string) => Channel | undefined;
  readonly preferences?: PreferenceBox;
  readonly timers?: Timers;
  readonly page?: Window;
  readonly firstProject?: (ids: NewId) => Promise<Project>;
  readonly shrink?: ShrinkPicture;
}

/** Either the wanted thing, or one sentence for the user. */
export type Told<T = object> = ({ readonly ok: true } & T) | { readonly ok: false; readonly says: string };

export interface App {
  readonly store: AppStore;
  readonly preferences: PreferenceBox;
  /** What is typed into the fields of the shown project. */
  readonly drafts: Pick<DraftDesk, 'type' | 'drop' | 'show'>;
  /** Ids for new floors, spaces and openings; works where `crypto.randomUUID` is missing. */
  readonly newId: NewId;
  /** What time it is; screens ask here, so that a test can say. */
  readonly clock: Clock;
  readonly signer: SignerBox;
  /** Pictures of openings: kept, read and sent with a file. */
  readonly photos: PhotoDesk;
  /** Opens the last project, or the demo where nothing is stored. Until it ends, `session.ready` is false. */
  readonly start: () => Promise<void>;
  readonly flush: () => Promise<void>;
  /** Flushes and lets go of the project; for tests and for replacing the app. */
  readonly close: () => Promise<void>;

  /** Puts what is on the screen where the stored project was, after the data of the site was cleared. */
  readonly storeAgain: () => Promise<void>;

  /** With every picture; `says` names what could not be read. */
  readonly copyToSave: () => Promise<CopyToSave>;
  readonly downloadCopy: () => Promise<void>;
  /** The same copy, to be opened with a passphrase only. */
  readonly downloadLocked: (passphrase: string) => Promise<Told>;
  /** A file of a project that is here already is only compared; `takeFile` says what becomes of it. */
  readonly openFile: (
    file: Pick<Blob, 'arrayBuffer'>,
    passphrase?: string,
  ) => Promise<Told<{ readonly meets?: Meeting; readonly locked?: string }>>;
  readonly takeFile: (meeting: Meeting, how: TakeHow) => Promise<Told>;

  readonly listProjects: () => Promise<Told<{ readonly projects: readonly ProjectSummary[] }>>;
  readonly openProject: (id: string) => Promise<Told>;
  readonly createProject: (name: string) => Promise<Told>;
  readonly removeProject: (id: string) => Promise<Told>;
  /** Takes a project out of this browser with its backups, second copy, list of edits and drafts. */
  readonly eraseProject: (id: string) => Promise<Told>;
  readonly listBackups: (projectId?: string) => Promise<Told<{ readonly backups: readonly BackupSummary[] }>>;
  /** Keeps the project as it is now, before something changes much of it at once. */
  readonly copyBeforeList: () => Promise<Told>;
  readonly restoreBackup: (backupId: number) => Promise<Told>;
  /** Freezes the project as it is now under a number. */
  readonly issueEdition: (edition: Edition) => Promise<Told>;
  readonly openEdition: (
    backupId: number,
  ) => Promise<Told<{ readonly project: Project; readonly edition: Edition }>>;
  readonly listCommands: () => Promise<Told<{ readonly commands: readonly Command[] }>>;
  /** The user has seen the damaged parts; they stay in the backups only. */
  readonly forgetSetAside: () => void;
  /** Where the work is kept, in sentences. */
  readonly whereKept: () => readonly string[];
}

export interface CopyToSave extends FileToSave {
  readonly says: string;
}

const otherWindow =
  'This project is open in another window, so it can only be read here. It can be edited here as soon as the other window is closed.';

const heldElsewhere = 'This project is open in another window. Close that window first; nothing was changed.';

const picturesNotSent = (count: number) =>
  count === 0
    ? ''
    : `${counted(count, 'photo')} of this project could not be read in this browser, so the copy does not hold the picture. What is written about it is in the copy.`;

/** What autosave is handed: the project, and which state of it this is. */
interface Handed {
  readonly project: Project;
  readonly position: Position;
}

/** Fetched when they are first needed, or ahead of that while nobody waits (`ahead`). */
const fileAccess = () => import('../storage/fileAccess.ts');
const meetings = () => import('./meeting.ts');
/** What a first screen does without and an action may need when there is no network any more. */
export const ahead: readonly (() => Promise<unknown>)[] = [fileAccess, meetings];

export function createApp(needs: AppNeeds = {}): App {
  const clock = needs.clock ?? systemClock;
  const ids = needs.ids ?? randomIds;
  const database = needs.database ?? createDatabase();
  const locks = 'locks' in needs ? needs.locks : browserLocks();
  const channelFor = needs.channel ?? browserChannel;
  const preferences = needs.preferences ?? createPreferences();
  const projects = createProjectStore(database, clock);
  const copies = needs.copies ?? createSecondCopy();
  const journal = createJournal();
  const known = createKnownProjects();
  const tabId = ids();

  const store = createAppStore({
    project: newProject(ids(), 'New project'),
    clock,
    ids,
    by: () => preferences.get('yourName'),
    onCommand: (command, project, how) => accepted(command, project, how),
    ready: false,
  });
  const drafts = createDraftDesk({
    box: needs.drafts ?? createDraftBox(),
    clock,
    onChange: (list) => store.getState().setDrafts(list),
  });
  store.subscribe(({ document: { project } }, { document: before }) => {
    if (project.id !== before.project.id) drafts.open(project.id);
  });
  const shown = () => store.getState().document.project;
  const photos = createPhotoDesk({
    photos: createPhotoStore(database, clock),
    copies,
    store,
    clock,
    newId: ids,
    by: () => preferences.get('yourName'),
    shrink: needs.shrink,
  });
  const copyOf = async (project: Project): Promise<CopyToSave> => {
    const { pictures, missing } = await photos.ofProject(project);
    const { fileOf } = await fileAccess();
    return { ...fileOf(project, clock(), pictures), says: picturesNotSent(missing.length) };
  };
  const tellProblem = (says: string) => {
    if (says !== '') store.getState().tell({ kind: 'problem', says });
  };

  let guard: TabGuard | undefined;
  let standing: Standing = atFirst;
  const move = (event: StandingEvent) => {
    standing = step(standing, event);
  };
  /** The document of the last saved copy: leaving it unsaved loses nothing. */
  let copied: Project | undefined;

  const log = createLineLog({
    copies,
    journal,
    whole: () => wholeOf({ project: shown(), position: standing.now, setAside: standing.setAside }, clock()),
    onTrouble: (says) => {
      store.getState().setOneCopy(says);
      if (says === '' || standing.base.kind !== 'detached') return;
      store.getState().tell({
        kind: 'problem',
        says: `Neither the database nor the second copy takes your edits now (${says}). Save a copy to a file before you close this page.`,
      });
    },
  });

  const autosave = createAutosave<Handed, Command>({
    write: async ({ project, position }, entries) => {
      if (standing.base.kind === 'standIn' && isUntouched()) return startAgain();
      const joined = await join({ project, position }, entries);
      if (!joined.ok) return joined;
      const written = joined.written
        ? { ok: true as const, at: clock() }
        : await projects.save({
            project,
            position,
            commands: joined.commands,
            after: storedAt(standing),
            setAside: standing.setAside,
          });
      if (!written.ok || project.id !== shown().id) return written;
      const stoodIn = standing.base.kind === 'standIn';
      move({ kind: 'saved', at: position });
      if (stoodIn) {
        const says = 'The database of this browser answers again. What it holds is listed on the Files page.';
        store.getState().tell({ kind: 'told', says });
      }
      // "Saved" is said when both copies have it; a second copy that fails says so by itself.
      await log.settled();
      log.saved(position.revision);
      known.note(project.id, { name: project.name, revision: position.revision, savedAt: written.at });
      guard?.tellSaved(position.revision);
      return written;
    },
    onState: (saving) => store.getState().setSaving(saving),
    ...(needs.timers ? { timers: needs.timers } : {}),
  });

  const isUntouched = () => {
    const { past, future } = store.getState().document;
    return past.length + future.length === 0;
  };

  /** Finds out what the database holds of a project that was opened without it. */
  async function join(
    { project, position }: Handed,
    commands: readonly Command[],
  ): Promise<Result<{ readonly written: boolean; readonly commands: readonly Command[] }>> {
    const { base, setAside } = standing;
    if (base.kind !== 'detached') return { ok: true, written: false, commands };
    const whole = wholeOf({ project, position, setAside }, clock());
    const joined = await rejoin(whole, base, projects, commands);
    if (!joined.ok) return joined;
    move({ kind: 'rejoined', stored: joined.stored });
    store.getState().tell({ kind: 'told', says: joined.says });
    return { ok: true, written: joined.written, commands: [...joined.missed, ...commands] };
  }

  /** The database answers after all, and nothing was done meanwhile: what it holds is opened. */
  async function startAgain(): Promise<Result<object>> {
    const listed = await projects.list();
    if (!listed.ok) return listed;
    store.getState().setBusy(true);
    void inTurn(async () => {
      if (standing.base.kind === 'standIn' && isUntouched()) {
        await letGo();
        await begin();
      }
      store.getState().setBusy(false);
    });
    return {
      ok: false,
      problem: { kind: 'readFailed', says: 'it answers again, and your projects are being opened' },
    };
  }

  function accepted(command: Command, project: Project, how: AcceptedHow): void {
    const after = standing.now.tip;
    move({ kind: 'changed', tip: command.id });
    const { now } = standing;
    log.accept({ revision: now.revision, command, after, takingBack: how.takingBack });
    autosave.changed({ project, position: now }, command, how.joinsLast);
  }

  /** The project changed by something that is no edit of its own. */
  function changedWhole(): void {
    move({ kind: 'changed', tip: ids() });
    void log.putWhole();
    autosave.changed({ project: shown(), position: standing.now });
  }

  database.onReplaced(async () => {
    await autosave.flush();
    autosave.stop(storageProblemInWords({ kind: 'databaseReplaced' }));
  });

  function show(loaded: Loaded): void {
    move({ kind: 'opened', at: loaded.position, setAside: loaded.setAside });
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
    log.begin(shown().id, found.ok ? found.kept : undefined);
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
    if (guard?.role() === 'writer' || autosave.unsaved() || saved <= (storedAt(standing)?.revision ?? 0))
      return;
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
    log.stop();
    const before = guard;
    guard = undefined;
    await before?.release();
  }

  interface Entering {
    /** Stands in when the project is not stored yet. */
    readonly fresh?: Project;
    /** The database is known to be out of reach: the second copy is asked alone. */
    readonly without?: StorageProblem;
  }

  /** Shows a stored project, out of its second copy where the database is out of reach. */
  async function enter(id: string, { fresh, without }: Entering = {}): Promise<Told> {
    const before = guard;
    const stood =
      before && id === shown().id ? { guard: before, role: roleOf(before) } : await standGuard(id);
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
      if (stood.guard !== guard) await stood.guard.release();
      return { ok: false, says: storageProblemInWords(found.problem) };
    }
    await takePlace(stood.guard);
    if (found.ok) {
      show(found.loaded);
      announce(found.loaded);
      if (found.says !== '') store.getState().tell({ kind: 'problem', says: found.says });
      noteKnown(found.loaded);
    } else if (fresh) {
      move({ kind: 'startedNew', setAside: [] });
      put(fresh);
    }
    if (stood.role === 'reader') autosave.stop(otherWindow);
    else {
      if (found.ok) log.begin(id, found.kept);
      else log.begin(id, standing.now);
      autosave.begin();
      if (isNew) {
        changedWhole();
        await autosave.flush();
      }
    }
    return { ok: true };
  }

  const roleOf = (one: TabGuard): 'writer' | 'reader' => (one.role() === 'writer' ? 'writer' : 'reader');

  /** The project under this guard takes the place of the one before. */
  async function takePlace(next: TabGuard): Promise<void> {
    const before = guard;
    autosave.replaced();
    log.stop();
    guard = next;
    if (before !== next) await before?.release();
  }

  async function enterFromCopy(
    id: string,
    stood: { readonly guard: TabGuard; readonly role: 'writer' | 'reader' },
    because: StorageProblem,
  ): Promise<Told> {
    const found = await fromCopy(id, { copies, journal });
    if (!found.ok) {
      if (stood.guard !== guard) await stood.guard.release();
      return { ok: false, says: storageProblemInWords(found.problem) };
    }
    await takePlace(stood.guard);
    const writes = isOutOfReach(because) && stood.role === 'writer';
    const { position: at, setAside } = found.loaded;
    move({ kind: 'openedFromCopy', at, setAside, writes, path: found.path, done: found.done });
    put(found.loaded.project);
    announce(found.loaded);
    noteKnown(found.loaded);
    if (!isOutOfReach(because)) autosave.stop(storageProblemInWords(because));
    else if (stood.role === 'reader') autosave.stop(otherWindow);
    else {
      log.begin(id, undefined);
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
    move({ kind: 'startedNew', setAside: aside });
    store.getState().replaceProject(project);
    log.begin(project.id, standing.now);
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

  async function begin(): Promise<void> {
    // Both are asked at once: where the database does not answer, the second copy need not be waited for.
    const inCopies = copies.ids();
    const listed = await projects.list();
    const make = () => (needs.firstProject ?? firstProject)(ids);
    if (!listed.ok) {
      await beginWithout(listed.problem, await inCopies, make);
      return;
    }
    const lost = await bringBackLost(
      listed.projects.map(({ id }) => id),
      await inCopies,
    );
    const after = lost.length > 0 ? await projects.list() : listed;
    const inOrder = lastFirst((after.ok ? after : listed).projects);
    for (const { id } of inOrder) {
      // oxlint-disable-next-line no-await-in-loop -- one after the other: the first that can be read is shown
      const entered = await enter(id);
      if (entered.ok) return;
      store.getState().tell({ kind: 'problem', says: entered.says });
    }
    // A browser that held a project and holds none is no new user's: the demo would hide the loss.
    const isNewHere = inOrder.length === 0 && known.all().length === 0;
    const project = isNewHere ? await make() : newProject(ids(), 'New project');
    const entered = await enter(project.id, { fresh: project });
    if (!entered.ok)
      await workInMemory({ ...project, id: ids() }, { kind: 'readFailed', says: entered.says });
  }

  const lastFirst = <T extends { readonly id: string }>(list: readonly T[]): readonly T[] => {
    const last = preferences.get('lastProjectId');
    return list.toSorted((a, b) => Number(b.id === last) - Number(a.id === last));
  };

  /** The database gives nothing: the second copy does, and where it has nothing either, what is missing is named. */
  async function beginWithout(
    problem: StorageProblem,
    inCopies: Answer<readonly string[]>,
    make: () => Promise<Project>,
  ): Promise<void> {
    const newestFirst = known.all().toSorted((a, b) => b.savedAt.localeCompare(a.savedAt));
    const place = (id: string) => newestFirst.findIndex((one) => one.id === id) >>> 0;
    const there = (inCopies.ok ? inCopies.value : []).map((id) => ({ id }));
    for (const { id } of lastFirst(there.toSorted((a, b) => place(a.id) - place(b.id)))) {
      // oxlint-disable-next-line no-await-in-loop -- one after the other: the first that can be read is shown
      if ((await enter(id, { without: problem })).ok) return;
    }
    if (!isOutOfReach(problem)) {
      autosave.stop(storageProblemInWords(problem));
      return;
    }
    for (const { name, savedAt } of newestFirst) {
      store.getState().tell({
        kind: 'problem',
        says: `The project “${name}”, last saved here ${savedAt.slice(0, 10)}, cannot be opened now, and there is no second copy of it. It was not changed.`,
      });
    }
    // An id of its own, so that it can never be taken for a project that is stored but unreadable now.
    const project =
      newestFirst.length === 0 ? { ...(await make()), id: ids() } : newProject(ids(), 'New project');
    await workInMemory(project, problem);
    move({ kind: 'standsIn' });
  }

  /** Projects that the second copy or the list of known projects has, and the database does not. */
  async function bringBackLost(
    inDatabase: readonly string[],
    kept: Answer<readonly string[]>,
  ): Promise<readonly string[]> {
    const missing = [...new Set([...(kept.ok ? kept.value : []), ...known.all().map(({ id }) => id)])].filter(
      (id) => !inDatabase.includes(id),
    );
    const brought: string[] = [];
    for (const id of missing) {
      // oxlint-disable-next-line no-await-in-loop -- one lock after the other
      const done = await guarded(id, async () => {
        const found = await reconcile(id, { projects, copies, journal });
        if (found.ok) {
          brought.push(id);
          store.getState().tell({ kind: 'problem', says: found.says });
          return { ok: true };
        }
        const { name, savedAt } = known.of(id) ?? { name: id, savedAt: '' };
        return {
          ok: false,
          says: `The project “${name}”, last saved here ${savedAt.slice(0, 10)}, is no longer in this browser, and there is no second copy of it. Open the last copy you saved to a file.`,
        };
      });
      if (!done.ok) store.getState().tell({ kind: 'problem', says: done.says });
    }
    return brought;
  }

  /** Does something to a project that no other window may be writing meanwhile. */
  async function guarded(id: string, work: () => Promise<Told>): Promise<Told> {
    if (guard && id === shown().id) {
      return guard.role() === 'reader' ? { ok: false, says: otherWindow } : work();
    }
    const stood = await standGuard(id);
    try {
      return stood.role === 'reader' ? { ok: false, says: heldElsewhere } : await work();
    } finally {
      await stood.guard.release();
    }
  }

  /** Removes a project from this browser in one way or another; where it is shown, the next one takes its place. */
  const takeAway = (id: string, work: () => Promise<Told>): Promise<Told> =>
    inTurn(async () => {
      const isShown = id === shown().id;
      store.getState().setBusy(true);
      try {
        if (isShown) await autosave.flush();
        const done = await guarded(id, async () => {
          // Nothing may be written behind the back of what is taken away.
          if (isShown) log.stop();
          await log.settled();
          const taken = await work();
          if (!taken.ok && isShown) log.begin(id, undefined);
          return taken;
        });
        if (!done.ok || !isShown) return done;
        await letGo();
        await begin();
        return { ok: true };
      } finally {
        store.getState().setBusy(false);
      }
    });

  /** What lies outside the database; otherwise the next start would take the project for lost and bring it back. */
  async function forgetOutside(id: string): Promise<string> {
    const removed = await copies.remove(id);
    journal.forget(id);
    drafts.forget(id);
    known.forget(id);
    return removed.ok ? '' : removed.says;
  }

  /** The furthest state of a project that the second copy or the list knows of. */
  async function furthest(id: string): Promise<number> {
    const looked = await copies.look(id);
    const lines = looked.ok ? looked.value.lines.map((line) => line.revision) : [];
    const copy = looked.ok ? (looked.value.copy?.revision ?? 0) : 0;
    return Math.max(copy, known.of(id)?.revision ?? 0, ...lines);
  }

  /** A project as it is in this browser; undefined when it is not. */
  async function stateHere(id: string): Promise<Project | undefined> {
    if (id === shown().id) return shown();
    const loaded = await projects.load(id);
    return loaded.ok ? loaded.project : undefined;
  }

  /** What has left this browser in a file. */
  function noteCopied(project: Project, { revision }: Position): void {
    if (project.id === shown().id) copied = project;
    known.note(project.id, { name: project.name, copiedAt: clock(), copiedRevision: revision });
  }

  const enterAgain = (id: string): Promise<Told> =>
    guard && id === shown().id ? Promise.resolve({ ok: true }) : enter(id);

  /** Puts an opened file in the place of what is here under its id; that is kept as a backup. */
  async function replaceBy(read: Extract<OpenedFile, { ok: true }>): Promise<Told> {
    const { project } = read.opened;
    let added: Awaited<ReturnType<typeof projects.add>> | undefined;
    const allowed = await guarded(project.id, async () => {
      added = await projects.add(read.opened, read.raw, await furthest(project.id));
      return { ok: true };
    });
    if (!allowed.ok || !added) return allowed;
    if (!added.ok) {
      if (!isOutOfReach(added.problem)) {
        return { ok: false, says: storageProblemInWords(added.problem) };
      }
      await workInMemory(project, added.problem, read.opened.setAside);
      announce(read.opened);
      return { ok: true };
    }
    await letGo();
    const entered = await enter(project.id);
    if (entered.ok && read.opened.migrated.length > 0) announce({ ...read.opened, setAside: [] });
    return entered;
  }

  /** Before any record of the file: a record without its picture would be a promise nobody can keep. */
  async function takePictures({
    opened,
    pictures,
    missing,
  }: Extract<OpenedFile, { ok: true }>): Promise<void> {
    tellProblem(await photos.keepAll(pictures));
    const gone = new Set<string>();
    for (const name of missing) {
      // oxlint-disable-next-line no-await-in-loop -- few, and each a single look
      if (!(await photos.read(name))) gone.add(name);
    }
    tellProblem(picturesMissing(opened.project, gone));
  }

  let persisted = false;
  async function askToPersist(): Promise<void> {
    const { storage } = navigator as { readonly storage?: StorageManager };
    try {
      persisted = (await storage?.persist?.()) ?? false;
    } catch {
      // A browser that does not answer has not agreed.
    }
  }

  let stopWatching: () => void = () => undefined;
  const inWords = <T>(result: Result<T>): Told<T> =>
    result.ok ? result : { ok: false, says: storageProblemInWords(result.problem) };

  return {
    store,
    preferences,
    drafts,
    newId: ids,
    clock,
    signer: createSignerBox(),
    photos,
    start: () =>
      inTurn(async () => {
        stopWatching = watchLeaving(
          {
            flush: autosave.flush,
            unsaved: () =>
              !drafts.isKept() || (unsavedWork() && (!log.isKept() || autosave.state().kind === 'readOnly')),
            gone: () => {
              void autosave.flush().then(() => guard?.release());
            },
          },
          needs.page,
        );
        void askToPersist();
        await begin();
        store.getState().setReady(true);
        // Nothing can be undone yet, and every lost project is back.
        void photos.sweep();
      }),
    flush: autosave.flush,
    close: () =>
      inTurn(async () => {
        await autosave.flush();
        stopWatching();
        await letGo();
        copies.close();
        database.close();
      }),

    storeAgain: () =>
      inTurn(async () => {
        const { saving } = store.getState();
        if (saving.kind !== 'readOnly' || !saving.canStoreAgain) return;
        move({ kind: 'storedGone' });
        autosave.begin();
        changedWhole();
        await autosave.flush();
      }),

    copyToSave: () => copyOf(shown()),
    downloadCopy: async () => {
      const [project, position] = [shown(), standing.now];
      const file = await copyOf(project);
      (await fileAccess()).downloadFile(file);
      tellProblem(file.says);
      noteCopied(project, position);
    },
    downloadLocked: async (passphrase) => {
      const [project, position] = [shown(), standing.now];
      try {
        const file = await copyOf(project);
        const { downloadFile, locked } = await fileAccess();
        downloadFile(await locked(file, passphrase));
        tellProblem(file.says);
      } catch (error) {
        const why = error instanceof Error ? error.message : String(error);
        return { ok: false, says: `The copy could not be locked (${why}). Nothing was saved.` };
      }
      noteCopied(project, position);
      return { ok: true };
    },
    openFile: (file, passphrase) =>
      inTurn(() =>
        reenter<{ readonly meets?: Meeting; readonly locked?: string }>(async () => {
          const { openFile } = await fileAccess();
          const read = await openFile(file, passphrase);
          if (!read.ok) return read.locked ? { ok: true, locked: read.says } : read;
          tellProblem(read.note);
          await takePictures(read);
          const here = await stateHere(read.opened.project.id);
          if (!here) return replaceBy(read);
          const { meetingOf } = await meetings();
          const meets = meetingOf(here, read);
          return meets ? { ok: true, meets } : enterAgain(here.id);
        }),
      ),
    takeFile: (meeting, how) =>
      inTurn(() =>
        reenter(async () => {
          const { read } = meeting;
          const { apart, mergeCommand } = await meetings();
          if (how === 'replace') return replaceBy(read);
          if (how === 'copy') {
            const project = apart(meeting, ids());
            return replaceBy({ ...read, opened: { ...read.opened, project }, raw: undefined });
          }
          const entered = await enterAgain(read.opened.project.id);
          if (!entered.ok) return entered;
          const kept = await projects.backup(shown().id, 'import');
          if (!kept.ok && !isOutOfReach(kept.problem)) return inWords(kept);
          return { ok: true, merge: () => mergeCommand(shown(), read.opened.project) };
        }),
      ).then((told) => {
        // Only now: while a project is being left or entered no edit is taken.
        if (!told.ok || !('merge' in told)) return told;
        const { label, edits } = told.merge();
        const done = store.getState().dispatch(label, edits);
        if (!done.ok) return { ok: false, says: done.says };
        announce(meeting.read.opened);
        return { ok: true };
      }),

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
          return enter(project.id, { fresh: project });
        }),
      ),
    removeProject: (id) =>
      takeAway(id, async () => {
        const done = await projects.remove(id);
        if (!done.ok) return inWords(done);
        await forgetOutside(id);
        return { ok: true };
      }),
    eraseProject: (id) =>
      takeAway(id, async () => {
        // The database last: until then a page that is closed half way finds the project as it was.
        const outside = await forgetOutside(id);
        const names = await photos.namesOf(id);
        const done = await projects.erase(id);
        if (!done.ok) return inWords(done);
        preferences.set('gridViews', withoutProject(preferences.get('gridViews'), id));
        await photos.sweep(names);
        if (outside !== '') {
          store.getState().tell({
            kind: 'problem',
            says: `The second copy could not be erased (${outside}). Clear the data of this site to be sure that nothing is left.`,
          });
        }
        return { ok: true };
      }),
    listBackups: async (projectId) => inWords(await projects.listBackups(projectId)),
    copyBeforeList: async () => {
      await autosave.flush();
      const kept = await projects.backup(shown().id, 'list');
      if (kept.ok && !autosave.unsaved()) return { ok: true };
      const nothingToLose = Object.keys(shown().openings).length === 0 || copied === shown();
      if (nothingToLose) return { ok: true };
      const why = kept.ok ? 'the last edits are not stored' : storageProblemInWords(kept.problem);
      return {
        ok: false,
        says: `No backup could be kept before the import (${why}) Nothing was brought in. Save a copy to a file first, then bring the list in again.`,
      };
    },
    issueEdition: async (edition) => {
      await autosave.flush();
      if (autosave.unsaved())
        return { ok: false, says: 'The last edits are not stored yet, so nothing was issued.' };
      return inWords(await projects.issue(shown().id, edition));
    },
    openEdition: async (backupId) => inWords(await projects.issued(backupId)),
    restoreBackup: (backupId) =>
      inTurn(() =>
        reenter(async () => {
          const of = await projects.projectOfBackup(backupId);
          if (!of.ok) return inWords(of);
          const restored = await guarded(of.projectId, async () =>
            inWords(await projects.restore(backupId, await furthest(of.projectId))),
          );
          if (!restored.ok) return restored;
          await letGo();
          return enter(of.projectId);
        }),
      ),
    listCommands: async () => inWords(await projects.listCommands(shown().id)),
    whereKept: () => {
      const { oneCopy } = store.getState().session;
      return whereKept({ oneCopy, persisted, known: known.of(shown().id), revision: standing.now.revision });
    },
    forgetSetAside: () => {
      move({ kind: 'setAsideForgotten' });
      changedWhole();
    },
  };
}
