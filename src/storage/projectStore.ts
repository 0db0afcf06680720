import type { Command } from '../domain/commands/command.ts';
import type { Project, SetAside } from '../domain/model/project.ts';
import type { Opened } from '../domain/versions/file.ts';
import { newestFormat } from '../domain/versions/migrations.ts';
import { addBackup, fitsToday, readable } from './backups.ts';
import type { BackupReason, BackupRow, Database, ProjectRow, Tables } from './database.ts';
import { Refused, type Result } from './problems.ts';

export type ProjectSummary = Omit<ProjectRow, 'document' | 'setAside'>;
export type BackupSummary = Omit<BackupRow, 'document'>;

export interface Loaded {
  readonly project: Project;
  readonly revision: number;
  readonly migrated: readonly string[];
  readonly setAside: readonly SetAside[];
}

export interface SaveOrder {
  readonly project: Project;
  readonly commands: readonly Command[];
  /** The revision this window last read or wrote; null when the project is new here. */
  readonly after: number | null;
  readonly setAside: readonly SetAside[];
}

export interface ProjectStore {
  readonly list: () => Promise<Result<{ readonly projects: readonly ProjectSummary[] }>>;
  /** Never writes: opening the app changes no stored project. */
  readonly load: (id: string) => Promise<Result<Loaded>>;
  readonly save: (order: SaveOrder) => Promise<Result<{ readonly revision: number; readonly at: string }>>;
  /** Puts an opened file in the store; what stood under the same id is kept as a backup first. */
  readonly add: (
    opened: Extract<Opened, { ok: true }>,
    raw?: unknown,
  ) => Promise<Result<{ readonly revision: number }>>;
  readonly remove: (id: string) => Promise<Result<object>>;
  readonly listBackups: (
    projectId?: string,
  ) => Promise<Result<{ readonly backups: readonly BackupSummary[] }>>;
  /** Today's state is set aside first, so a restore can itself be taken back. */
  readonly restore: (backupId: number) => Promise<Result<Loaded>>;
  readonly listCommands: (projectId: string) => Promise<Result<{ readonly commands: readonly Command[] }>>;
}

export function createProjectStore(database: Database, clock: () => string): ProjectStore {
  const copy = (tables: Tables, row: ProjectRow, reason: BackupReason) =>
    addBackup(tables, {
      projectId: row.id,
      name: row.name,
      at: clock(),
      reason,
      formatVersion: row.formatVersion,
      document: row.document,
    });

  return {
    list: () =>
      database.run('reading', async (tables) => {
        const rows = await tables.projects.orderBy('changedAt').toArray();
        return {
          projects: rows
            .toReversed()
            .map(({ document: _document, setAside: _setAside, ...summary }) => summary),
        };
      }),

    load: (id) =>
      database.run('reading', async (tables) => {
        const row = await tables.projects.get(id);
        if (!row) throw new Refused({ kind: 'noSuchProject' });
        const opened = readable(row);
        return {
          project: opened.project,
          revision: row.revision,
          migrated: opened.migrated,
          setAside: [...row.setAside, ...opened.setAside],
        };
      }),

    save: ({ project, commands, after, setAside }) =>
      database.run('writing', async (tables) => {
        const before = await tables.projects.get(project.id);
        // Checked in the same transaction as the write: between load and save, a newer window may have
        // rewritten the record.
        fitsToday(before);
        if ((before?.revision ?? null) !== after) throw new Refused({ kind: 'changedElsewhere' });
        const at = clock();
        if (before) {
          const reason = reasonToCopy(before, setAside, at);
          if (reason) await copy(tables, before, reason);
        }
        const row = rowOf(project, at, (after ?? 0) + 1, setAside);
        await tables.projects.put(row);
        await tables.commands.bulkAdd(commands.map((command) => ({ projectId: project.id, command })));
        return { revision: row.revision, at };
      }),

    add: ({ project, migrated, setAside }, raw) =>
      database.run('writing', async (tables) => {
        const before = await tables.projects.get(project.id);
        fitsToday(before);
        if (before) await copy(tables, before, 'import');
        if (raw !== undefined && (migrated.length > 0 || setAside.length > 0)) {
          const { formatVersion, project: document } = raw as { formatVersion: number; project: unknown };
          const reason = migrated.length > 0 ? 'migration' : 'damaged';
          await addBackup(tables, {
            projectId: project.id,
            name: project.name,
            at: clock(),
            reason,
            formatVersion,
            document,
          });
        }
        const row = rowOf(project, clock(), (before?.revision ?? 0) + 1, setAside);
        await tables.projects.put(row);
        return { revision: row.revision };
      }),

    remove: (id) =>
      database.run('writing', async (tables) => {
        const row = await tables.projects.get(id);
        if (!row) throw new Refused({ kind: 'noSuchProject' });
        fitsToday(row);
        await copy(tables, row, 'remove');
        await tables.projects.delete(id);
        return {};
      }),

    listBackups: (projectId) =>
      database.run('reading', async (tables) => {
        const rows =
          projectId === undefined
            ? await tables.backups.toArray()
            : await tables.backups.where('projectId').equals(projectId).toArray();
        return { backups: rows.toReversed().map(({ document: _document, ...summary }) => summary) };
      }),

    restore: (backupId) =>
      database.run('writing', async (tables) => {
        const backup = await tables.backups.get(backupId);
        if (!backup) throw new Refused({ kind: 'noSuchBackup' });
        const opened = readable(backup);
        const before = await tables.projects.get(backup.projectId);
        fitsToday(before);
        if (before) await copy(tables, before, 'restore');
        const row = rowOf(opened.project, clock(), (before?.revision ?? 0) + 1, opened.setAside);
        await tables.projects.put(row);
        return {
          project: opened.project,
          revision: row.revision,
          migrated: opened.migrated,
          setAside: opened.setAside,
        };
      }),

    listCommands: (projectId) =>
      database.run('reading', async (tables) => {
        const rows = await tables.commands.where('projectId').equals(projectId).sortBy('seq');
        return { commands: rows.map((row) => row.command) };
      }),
  };
}

/** Anything the new write would make unreachable is copied in the same transaction, and once a day anyway. */
function reasonToCopy(
  before: ProjectRow,
  setAside: readonly SetAside[],
  at: string,
): BackupReason | undefined {
  if (before.formatVersion < newestFormat) return 'migration';
  if (setAside.length > before.setAside.length) return 'damaged';
  if (before.changedAt.slice(0, 10) !== at.slice(0, 10)) return 'day';
  return undefined;
}

function rowOf(project: Project, at: string, revision: number, setAside: readonly SetAside[]): ProjectRow {
  return {
    id: project.id,
    name: project.name,
    changedAt: at,
    formatVersion: newestFormat,
    revision,
    size: JSON.stringify(project).length,
    document: project,
    setAside,
  };
}
