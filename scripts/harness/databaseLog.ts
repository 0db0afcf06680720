/** The log in which the browser writes its database, and what a power failure within a write does to it. */
import { readdir, stat, truncate } from 'node:fs/promises';
import path from 'node:path';

export async function databaseLog(profile: string): Promise<string> {
  const all = await readdir(profile, { recursive: true });
  const logs = all.filter((name) => name.includes('indexeddb.leveldb') && name.endsWith('.log'));
  const [log] = logs.toSorted();
  if (log === undefined) throw new Error('The profile holds no log of a database.');
  return path.join(profile, log);
}

/** Places of the cut, spread over the last save; each run of a harness takes the next one. */
const places = 17;

/** Cuts the log of a browser that has ended within what was written after `size`, in bytes. */
export async function cutEnd(log: string, size: number, run: number): Promise<void> {
  const end = (await stat(log)).size;
  const lastSave = Math.max(end - size, 1);
  const share = ((run * 5) % places) + 1;
  await truncate(log, Math.max(0, end - Math.ceil((lastSave * share) / (places + 1))));
}
