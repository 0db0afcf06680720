/**
 * Cuts the end off the log of the browser's database, as a power failure within a save does, then works on, quits and
 * starts again. `npx tsx scripts/harness/powerCut.ts 16`; ends with 1 when anything was lost.
 */
import { stat } from 'node:fs/promises';
import type { BrowserContext } from 'playwright';
import { newWindow } from '../../tests/stories/pages/window.ts';
import { addAll, harness, missing, untilSaved } from './bench.ts';
import { cutEnd, databaseLog } from './databaseLog.ts';

async function saved(context: BrowserContext, marks: readonly string[]) {
  const window = await newWindow(context);
  await addAll(window, marks, () => undefined);
  await untilSaved(window);
  return window;
}

await harness('powerCut', 16, (bench, index) =>
  bench.withProfile(async (profile) => {
    const first = await bench.start(profile);
    const before = await saved(first, ['ZZ-1']);
    const { size } = await stat(await databaseLog(profile));
    await addAll(before, ['ZZ-2'], () => undefined);
    await untilSaved(before);
    await first.close();
    await cutEnd(await databaseLog(profile), size, index);
    const second = await bench.start(profile);
    await saved(second, ['ZZ-3']);
    await second.close();
    const third = await bench.start(profile);
    const { gone, said } = await missing(third, ['ZZ-1', 'ZZ-2', 'ZZ-3']);
    await third.close();
    return { lost: gone, ...(said[0] !== undefined && { says: `said: ${said[0]}` }) };
  }),
);
