/**
 * Two and three windows on one project, with and without locks: edits in each window in turn, the writer closed or
 * killed in between. `npx tsx scripts/harness/windows.ts 12`. An edit counts once it was shown.
 */
import type { BrowserContext } from 'playwright';
import { newWindow } from '../../tests/stories/pages/window.ts';
import { addAll, harness, missing } from './bench.ts';

const setUps = [
  { windows: 2, locks: true, end: 'close' },
  { windows: 3, locks: true, end: 'close' },
  { windows: 2, locks: true, end: 'kill' },
  { windows: 3, locks: false, end: 'close' },
] as const;

const withoutLocks = (context: BrowserContext) =>
  context.addInitScript(() => {
    Object.defineProperty(navigator, 'locks', { value: undefined });
  });

await harness('windows', 12, (bench, index) =>
  bench.withProfile(async (profile) => {
    const setUp = setUps[index % setUps.length] ?? setUps[0];
    const context = await bench.start(profile);
    if (!setUp.locks) await withoutLocks(context);
    const windows = [];
    for (let count = 0; count < setUp.windows; count += 1) {
      // oxlint-disable-next-line no-await-in-loop -- the first one opened is the writer
      windows.push(await newWindow(context));
    }
    const shown: string[] = [];
    for (const [place, window] of windows.entries()) {
      const editable = window.page.locator(
        '[data-saving="saved"], [data-saving="waiting"], [data-saving="saving"]',
      );
      // oxlint-disable-next-line no-await-in-loop -- each takes over when the one before it has ended
      await editable.waitFor({ timeout: 60_000 });
      // oxlint-disable-next-line no-await-in-loop
      await addAll(window, [`ZZ-${place}a`, `ZZ-${place}b`], (mark) => shown.push(mark));
      const isLast = place === windows.length - 1;
      if (isLast) continue;
      // oxlint-disable-next-line no-await-in-loop
      await (setUp.end === 'close' ? window.page.close() : window.kill());
    }
    const { gone } = await missing(context, shown);
    await context.close();
    return {
      lost: gone,
      says: `${setUp.windows} windows, ${setUp.locks ? 'locks' : 'no locks'}, ${setUp.end}`,
    };
  }),
);
