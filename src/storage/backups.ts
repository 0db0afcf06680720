import { fileMarker, openProjectData, type Opened } from '../domain/versions/file.ts';
import { newestFormat } from '../domain/versions/migrations.ts';
import type { BackupRow, NewBackup, ProjectRow, Tables } from './database.ts';
import { Refused } from './problems.ts';

export const newestKept = 3;
export const mostBackups = 10;

/** Adds a copy and thins out the old ones, inside the caller's transaction. */
export async function addBackup(tables: Tables, backup: NewBackup): Promise<void> {
  await tables.backups.add(backup);
  const all = await tables.backups.where('projectId').equals(backup.projectId).toArray();
  await tables.backups.bulkDelete(tooMany(all));
}

/**
 * The three newest stay, and the newest of each earlier day, ten in all. The newest copy of each older format stays
 * beside them: the state before a migration is the only copy an older release can read. So does the newest copy of
 * another history: it is the only place that work is in.
 */
export function tooMany(
  backups: readonly Pick<BackupRow, 'id' | 'at' | 'reason' | 'formatVersion'>[],
): number[] {
  // By id, not by time: a clock that was set back must not make today's copy the oldest.
  const newestFirst = backups.toSorted((a, b) => b.id - a.id);
  const copies = newestFirst.filter((backup) => backup.reason !== 'edition');
  const kept = copies.slice(0, newestKept);
  const days = new Set<string>();
  for (const backup of copies.slice(newestKept)) {
    const day = backup.at.slice(0, 10);
    if (days.has(day) || kept.length >= mostBackups) continue;
    days.add(day);
    kept.push(backup);
  }
  const formats = new Set<number>();
  for (const backup of newestFirst) {
    if (backup.reason !== 'migration' || formats.has(backup.formatVersion)) continue;
    formats.add(backup.formatVersion);
    kept.push(backup);
  }
  // What was issued is held by others; it stays as long as the project does.
  kept.push(...newestFirst.filter((backup) => backup.reason === 'edition' && !kept.includes(backup)));
  const apart = newestFirst.find((backup) => backup.reason === 'apart');
  if (apart) kept.push(apart);
  return newestFirst.filter((backup) => !kept.includes(backup)).map((backup) => backup.id);
}

/** Stored projects, backups and files are read by the same code: recognize, migrate, validate. */
export function readable(row: {
  readonly name: string;
  readonly formatVersion: number;
  readonly document: unknown;
}): Extract<Opened, { ok: true }> {
  fitsToday(row);
  const opened = openProjectData({
    format: fileMarker,
    formatVersion: row.formatVersion,
    project: row.document,
  });
  if (!opened.ok) throw new Refused({ kind: 'unreadable', open: opened.problem });
  return opened;
}

/** A record of a newer version is neither read nor written over. */
export function fitsToday(row: Pick<ProjectRow, 'name' | 'formatVersion'> | undefined): void {
  if (row && row.formatVersion > newestFormat) {
    throw new Refused({
      kind: 'recordTooNew',
      name: row.name,
      found: row.formatVersion,
      newest: newestFormat,
    });
  }
}
