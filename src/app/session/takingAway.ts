import { withoutProject } from '../../domain/grid/viewBox.ts';
import type { App } from './app.ts';
import type { Entrance } from './entering.ts';
import type { Guarding } from './guarding.ts';
import { forgetOutside, inWords, type Kit, type Told } from './kit.ts';
import type { Writing } from './writing.ts';

/** Projects that leave this browser, with or without their backups. */
export function createTakingAway(
  kit: Kit,
  { autosave, log }: Writing,
  { letGo }: Entrance,
  { guarded }: Guarding,
  begin: () => Promise<void>,
): Pick<App, 'removeProject' | 'eraseProject'> {
  const { inTurn, photos, preferences, projects, shown, store } = kit;

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
          if (!taken.ok && isShown) await log.begin(id, undefined);
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

  return {
    removeProject: (id) =>
      takeAway(id, async () => {
        const done = await projects.remove(id);
        if (!done.ok) return inWords(done);
        await forgetOutside(kit, id);
        return { ok: true };
      }),
    eraseProject: (id) =>
      takeAway(id, async () => {
        // The database last: until then a page that is closed half way finds the project as it was.
        const outside = await forgetOutside(kit, id);
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
  };
}
