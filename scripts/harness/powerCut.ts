/**
 * Cuts the end off the log of the browser's database, as a power failure within a save does, then works on, quits and
 * starts again. `npx tsx scripts/harness/powerCut.ts 16`; ends with 1 when anything was lost.
 */
import { readdir, stat, truncate } from 'node:fs/promises';
import path from 'node:path';
import type { BrowserContext } from 'playwright';
import { newWindow } from '../../tests/stories/pages/window.ts';
import { addAll, harness, missing, untilSaved } from './bench.ts';

async function saved(context: BrowserContext, marks: readonly string[]) {
  const window = await newWindow(context);
  await addAll(window, marks, () => undefined);
  await untilSaved(window);
  return window;
}

async function databaseLog(profile: string): Promise<string> {
  const all = await readdir(profile, { recursive: true });
  const logs = all.filter((name) => name.includes('indexeddb.leveldb') && name.endsWith('.log'));
  const [log] = logs.toSorted();
  if (log === undefined) throw new Error('The profile holds no log of a database.');
  return path.join(profile, log);
}

/** Places of the cut, spread over the last save; each run of the harness takes the next one. */
const places = 17;

await harness('powerCut', 16, (bench, index) =>
  bench.withProfile(async (profile) => {
    const first = await bench.start(profile);
    const before = await saved(first, ['ZZ-1']);
    const { size } = await stat(await databaseLog(profile));
    await addAll(before, ['ZZ-2'], () => undefined);
    await untilSaved(before);
    await first.close();
    const log = await databaseLog(profile);
    const end = (await stat(log)).size;
    const lastSave = Math.max(end - size, 1);
    const share = ((index * 5) % places) + 1;
    await truncate(log, Math.max(0, end - Math.ceil((lastSave * share) / (places + 1))));
    const second = await bench.start(profile);
    await saved(second, ['ZZ-3']);
    await second.close();
    const third = await bench.start(profile);
    const { gone, said } = await missing(third, ['ZZ-1', 'ZZ-2', 'ZZ-3']);
    await third.close();
    return { lost: gone, ...(said[0] !== undefined && { says: `said: ${said[0]}` }) };
  }),
);
