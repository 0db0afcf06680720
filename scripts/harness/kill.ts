/**
 * Kills the whole browser at a random moment while edits stream in, at the moment of saving, and just after “Saved”.
 * `npx tsx scripts/harness/kill.ts 30`. An edit counts once it was shown; “Saved” was said or not.
 */
import { newWindow } from '../../tests/stories/pages/window.ts';
import { addAll, harness, killBrowser, missing, pause, withProfile } from './bench.ts';

const moments = ['random', 'saving', 'saved'] as const;

await harness('kill', 30, (bench, index) =>
  withProfile(async (profile) => {
    const moment = moments[index % moments.length] ?? 'random';
    const first = await bench.start(profile);
    const window = await newWindow(first);
    const accepted: string[] = [];
    const typing = addAll(window, ['ZZ-1', 'ZZ-2', 'ZZ-3', 'ZZ-4'], (mark) => accepted.push(mark)).catch(
      () => undefined,
    );
    // On a busy machine an edit takes seconds, so the moment is counted from one that was shown.
    const after = moment === 'random' ? 1 + Math.floor(Math.random() * 3) : 1;
    while (accepted.length < after) {
      // oxlint-disable-next-line no-await-in-loop -- waits for the edit
      await pause(5);
    }
    if (moment === 'random') await pause(Math.random() * 1_500);
    else {
      const mark = window.page.locator(`[data-saving="${moment}"]`);
      await mark.waitFor({ timeout: 30_000 }).catch(() => undefined);
      await pause(Math.random() * (moment === 'saving' ? 40 : 150));
    }
    const shown = [...accepted];
    await killBrowser(profile);
    await typing;
    await first.close().catch(() => undefined);
    // One more saved edit and an ordinary end: a torn database shows only at the start after that.
    const second = await bench.start(profile);
    const again = await missing(second, shown);
    await addAll(again.window, ['ZZ-9'], () => undefined);
    await again.window.page.locator('[data-saving="saved"]').waitFor({ timeout: 60_000 });
    await second.close();
    const third = await bench.start(profile);
    const last = await missing(third, [...shown, 'ZZ-9']);
    await third.close();
    const lost = [...new Set([...again.gone, ...last.gone])];
    return {
      lost,
      says: `${moment}, ${shown.length} shown${last.said[0] ? `; said: ${last.said[0]}` : ''}`,
    };
  }),
);
