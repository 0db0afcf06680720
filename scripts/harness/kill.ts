/**
 * Kills the whole browser at a random moment while edits stream in, at the moment of saving, and just after “Saved”.
 * `npx tsx scripts/harness/kill.ts 30`. An edit counts once it was shown; “Saved” was said or not. Each run is a life of
 * several kills on one profile, with an ordinary end after every second one: a torn database shows only at the start
 * after that.
 */
import type { BrowserContext } from 'playwright';
import { addAll, type AppWindow, harness, killBrowser, missing, pause, untilSaved } from './bench.ts';

const moments = ['random', 'saving', 'saved', 'mixed'] as const;
const killsOfALife = 5;

await harness('kill', 6, ({ start, withProfile }, index) =>
  withProfile(async (profile) => {
    const shown: string[] = [];
    const gone = new Set<string>();
    const said: string[] = [];
    /** A start that finds everything shown so far, or notes what it does not find. */
    const look = async (): Promise<{ readonly context: BrowserContext; readonly window: AppWindow }> => {
      const context = await start(profile);
      const found = await missing(context, shown);
      for (const mark of found.gone) gone.add(mark);
      said.push(...found.said.slice(0, 1));
      return { context, window: found.window };
    };
    for (let kill = 0; kill < killsOfALife; kill += 1) {
      const chosen = moments[(index + kill) % moments.length] ?? 'mixed';
      // oxlint-disable-next-line no-await-in-loop -- one life, one moment after the other
      const { context, window } = await look();
      const marks = ['a', 'b', 'c', 'd'].map((letter) => `ZZ-${kill}${letter}`);
      const before = shown.length;
      let ended = false;
      const typing = addAll(window, marks, (mark) => shown.push(mark))
        .catch(() => undefined)
        .finally(() => {
          ended = true;
        });
      // On a busy machine an edit takes seconds, so the moment is counted from one that was shown.
      const after = before + (chosen === 'random' ? 1 + Math.floor(Math.random() * 3) : 1);
      // oxlint-disable-next-line no-unmodified-loop-condition -- the typing ends beside it
      while (!ended && shown.length < after) {
        // oxlint-disable-next-line no-await-in-loop -- waits for the edit
        await pause(5);
      }
      // oxlint-disable-next-line no-await-in-loop
      await momentOf(window, chosen);
      // oxlint-disable-next-line no-await-in-loop
      await killBrowser(profile);
      // oxlint-disable-next-line no-await-in-loop
      await typing;
      // oxlint-disable-next-line no-await-in-loop
      await context.close().catch(() => undefined);
      if (kill % 2 === 0) continue;
      // oxlint-disable-next-line no-await-in-loop
      const again = await look();
      // oxlint-disable-next-line no-await-in-loop
      await addAll(again.window, [`ZZ-${kill}e`], (mark) => shown.push(mark));
      // oxlint-disable-next-line no-await-in-loop
      await untilSaved(again.window);
      // oxlint-disable-next-line no-await-in-loop
      await again.context.close();
    }
    const { context } = await look();
    await context.close();
    return {
      lost: [...gone],
      says: `${killsOfALife} kills, ${shown.length} edits shown${said.length === 0 ? '' : `; said: ${[...new Set(said)].join(' | ')}`}`,
    };
  }),
);

async function momentOf(window: AppWindow, chosen: (typeof moments)[number]): Promise<void> {
  if (chosen === 'random') return pause(Math.random() * 1_500);
  // Without a wait the edit has just been painted, and is on its way into both stores.
  if (chosen === 'mixed') return pause(Math.random() * 60);
  const mark = window.page.locator(`[data-saving="${chosen}"]`);
  await mark.waitFor({ timeout: 30_000 }).catch(() => undefined);
  return pause(Math.random() * (chosen === 'saving' ? 40 : 150));
}
