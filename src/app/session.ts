import { newProject } from '../domain/model/newProject.ts';
import type { Project } from '../domain/model/project.ts';
import type { Timers } from '../storage/timers.ts';
import { createDatabase, type Database } from '../storage/database.ts';
import { createDraftBox, type DraftBox } from '../storage/drafts.ts';
import { createJournal } from '../storage/copy/journal.ts';
import { createKnownProjects } from '../storage/copy/known.ts';
import { createSecondCopy, type SecondCopy } from '../storage/copy/secondCopy.ts';
import { storageProblemInWords } from '../storage/problems.ts';
import { createProjectStore } from '../storage/projectStore.ts';
import { createPhotoStore } from '../storage/photoStore.ts';
import { browserChannel, browserLocks, type Channel, type Locks } from '../storage/tabGuard.ts';
import { type Clock, type NewId, randomIds, systemClock } from './clock.ts';
import { createDraftDesk } from './draftDesk.ts';
import { firstProject } from './firstProject.ts';
import { watchLeaving } from './leaving.ts';
import { createPreferences, type PreferenceBox } from './preferences.ts';
import { createPhotoDesk } from './photoDesk.ts';
import type { App } from './session/app.ts';
import { createBeginning } from './session/beginning.ts';
import { createCopiesOut } from './session/copiesOut.ts';
import { createEntrance } from './session/entering.ts';
import { createGuarding } from './session/guarding.ts';
import { createTurns, inWords, type Kit } from './session/kit.ts';
import { createStandingBox } from './session/standingBox.ts';
import { createTakingAway } from './session/takingAway.ts';
import { createTakingIn } from './session/takingIn.ts';
import { createWriting, type Writing } from './session/writing.ts';
import { createAppStore } from './store.ts';
import type { ShrinkPicture } from './shrinkPicture.ts';
import { createSignerBox } from './signerBox.ts';
import { lastCopy, whereKept } from './whereKept.ts';

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

export function createApp(needs: AppNeeds = {}): App {
  const clock = needs.clock ?? systemClock;
  const ids = needs.ids ?? randomIds;
  const database = needs.database ?? createDatabase();
  const preferences = needs.preferences ?? createPreferences();
  const copies = needs.copies ?? createSecondCopy();
  const standing = createStandingBox();
  const inTurn = createTurns();

  const store = createAppStore({
    project: newProject(ids(), 'New project'),
    clock,
    ids,
    by: () => preferences.get('yourName'),
    onCommand: (command, project, how) => writing.accepted(command, project, how),
    ready: false,
  });
  const shown = () => store.getState().document.project;
  const drafts = createDraftDesk({
    box: needs.drafts ?? createDraftBox(),
    clock,
    onChange: (list) => store.getState().setDrafts(list),
  });
  store.subscribe(({ document: { project } }, { document: before }) => {
    if (project.id !== before.project.id) drafts.open(project.id);
  });
  const photos = createPhotoDesk({
    photos: createPhotoStore(database, clock),
    copies,
    store,
    clock,
    newId: ids,
    by: () => preferences.get('yourName'),
    shrink: needs.shrink,
  });
  const projects = createProjectStore(database, clock);
  const known = createKnownProjects();
  const tellProblem = (says: string) => {
    if (says !== '') store.getState().tell({ kind: 'problem', says });
  };
  const kit: Kit = {
    clock,
    ids,
    store,
    preferences,
    drafts,
    photos,
    projects,
    copies,
    journal: createJournal(),
    known,
    standing,
    shown,
    tellProblem,
    inTurn,
  };
  const copiesOut = createCopiesOut(kit);
  const writing: Writing = createWriting(kit, needs.timers, {
    startAgain: () => beginning.startAgain(),
    saved: (revision) => guards.current()?.tellSaved(revision),
  });
  const { autosave, log, changedWhole } = writing;
  const guards = createGuarding(kit, {
    tabId: ids(),
    locks: 'locks' in needs ? needs.locks : browserLocks(),
    channel: needs.channel ?? browserChannel,
    timers: needs.timers,
    changeRole: (role) => entrance.changeRole(role),
    follow: (saved) => entrance.follow(saved),
  });
  const entrance = createEntrance(kit, writing, guards, copiesOut.isCopied);
  const { enter, letGo, reenter, unsavedWork } = entrance;
  const beginning = createBeginning(kit, writing, entrance, guards, needs.firstProject ?? firstProject);
  const { begin } = beginning;
  const takingIn = createTakingIn(kit, entrance, guards);
  const takingAway = createTakingAway(kit, writing, entrance, guards, begin);

  database.onReplaced(async () => {
    await autosave.flush();
    autosave.stop(storageProblemInWords({ kind: 'databaseReplaced' }));
  });

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
              void autosave.flush().then(() => guards.current()?.release());
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
        standing.move({ kind: 'storedGone' });
        autosave.begin();
        changedWhole();
        await autosave.flush();
      }),

    ...copiesOut,
    ...takingIn,
    ...takingAway,

    listProjects: async () => inWords(await projects.list()),
    openProject: (id) =>
      inTurn(async () => {
        // Asking for a lock that this window holds already would make it a reader of its own project.
        if (guards.current() && id === shown().id) return { ok: true };
        return reenter(() => enter(id));
      }),
    createProject: (name) =>
      inTurn(() =>
        reenter(() => {
          const project = newProject(ids(), name.trim() || 'New project');
          return enter(project.id, { fresh: project });
        }),
      ),
    listBackups: async (projectId) => inWords(await projects.listBackups(projectId)),
    copyBeforeList: async () => {
      await autosave.flush();
      const kept = await projects.backup(shown().id, 'list');
      if (kept.ok && !autosave.unsaved()) return { ok: true };
      const nothingToLose = Object.keys(shown().openings).length === 0 || copiesOut.isCopied(shown());
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
    listCommands: async () => inWords(await projects.listCommands(shown().id)),
    whereKept: () => {
      const { oneCopy } = store.getState().session;
      return whereKept({ oneCopy, persisted, known: known.of(shown().id), revision: standing.now.revision });
    },
    lastCopy: () => lastCopy(known.of(shown().id), standing.now.revision),
    forgetSetAside: () => {
      standing.move({ kind: 'setAsideForgotten' });
      changedWhole();
    },
  };
}
