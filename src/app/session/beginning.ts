import type { Project } from '../../domain/model/project.ts';
import { newProject } from '../../domain/model/newProject.ts';
import type { Answer } from '../../storage/copy/secondCopy.ts';
import {
  isOutOfReach,
  type Result,
  type StorageProblem,
  storageProblemInWords,
} from '../../storage/problems.ts';
import type { NewId } from '../clock.ts';
import { reconcile } from '../reconcile.ts';
import type { Entrance } from './entering.ts';
import type { Guarding } from './guarding.ts';
import type { Kit } from './kit.ts';
import type { Writing } from './writing.ts';

/** Which project is shown first, and what is said of those that cannot be. */
export function createBeginning(
  kit: Kit,
  { autosave, isUntouched }: Writing,
  { enter, letGo, workInMemory }: Entrance,
  guards: Guarding,
  firstProject: (ids: NewId) => Promise<Project>,
) {
  const { copies, ids, inTurn, journal, known, preferences, projects, standing, store } = kit;

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

  async function begin(): Promise<void> {
    // Both are asked at once: where the database does not answer, the second copy need not be waited for.
    const inCopies = copies.ids();
    const listed = await projects.list();
    const make = () => firstProject(ids);
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
    standing.move({ kind: 'standsIn' });
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
      const done = await guards.guarded(id, async () => {
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

  return { begin, startAgain };
}
