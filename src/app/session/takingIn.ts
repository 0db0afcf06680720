import { picturesMissing } from '../../domain/survey/photos.ts';
import type { Project } from '../../domain/model/project.ts';
import type { OpenedFile } from '../../storage/fileAccess.ts';
import { isOutOfReach, storageProblemInWords } from '../../storage/problems.ts';
import type { App } from './app.ts';
import type { Meeting } from '../meeting.ts';
import type { Entrance } from './entering.ts';
import type { Guarding } from './guarding.ts';
import { furthest, inWords, type Kit, type Told } from './kit.ts';
import { fileAccess, meetings } from './ahead.ts';

/** Projects that come in from a file or a backup. */
export function createTakingIn(
  kit: Kit,
  { announce, enter, enterAgain, letGo, reenter, workInMemory }: Entrance,
  { guarded }: Guarding,
): Pick<App, 'openFile' | 'takeFile' | 'restoreBackup'> {
  const { ids, inTurn, photos, projects, shown, store, tellProblem } = kit;

  /** A project as it is in this browser; undefined when it is not. */
  async function stateHere(id: string): Promise<Project | undefined> {
    if (id === shown().id) return shown();
    const loaded = await projects.load(id);
    return loaded.ok ? loaded.project : undefined;
  }

  /** Puts an opened file in the place of what is here under its id; that is kept as a backup. */
  async function replaceBy(read: Extract<OpenedFile, { ok: true }>): Promise<Told> {
    const { project } = read.opened;
    let added: Awaited<ReturnType<typeof projects.add>> | undefined;
    const allowed = await guarded(project.id, async () => {
      added = await projects.add(read.opened, read.raw, await furthest(kit, project.id));
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

  return {
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

    restoreBackup: (backupId) =>
      inTurn(() =>
        reenter(async () => {
          const of = await projects.projectOfBackup(backupId);
          if (!of.ok) return inWords(of);
          const restored = await guarded(of.projectId, async () =>
            inWords(await projects.restore(backupId, await furthest(kit, of.projectId))),
          );
          if (!restored.ok) return restored;
          await letGo();
          return enter(of.projectId);
        }),
      ),
  };
}
