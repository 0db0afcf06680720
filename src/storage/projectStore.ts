import type { Command } from '../domain/commands/command.ts';
import { staysInList } from '../domain/commands/lasting.ts';
import type { Project, SetAside } from '../domain/model/project.ts';
import type { Opened } from '../domain/versions/file.ts';
import { newestFormat } from '../domain/versions/migrations.ts';
import { addBackup, fitsToday, readable } from './backups.ts';
import type { BackupReason, BackupRow, Database, Edition, ProjectRow, Tables } from './database.ts';
import type { Position } from './copy/position.ts';
import type { WholeCopy } from './copy/slots.ts';
import { Refused, type Result } from './problems.ts';

export type ProjectSummary = Omit<ProjectRow, 'document' | 'setAside'>;
export type BackupSummary = Omit<BackupRow, 'document'>;

export interface Loaded {
  readonly project: Project;
  readonly position: Position;
  readonly migrated: readonly string[];
  readonly setAside: readonly SetAside[];
}

export interface SaveOrder {
  readonly project: Project;
  readonly commands: readonly Command[];
  /** The state handed over: one edit further with every edit accepted. */
  readonly position: Position;
  /** What this window last read or wrote; null when the project is new here. */
  readonly after: Position | null;
  readonly setAside: readonly SetAside[];
}

export interface ProjectStore {
  readonly list: () => Promise<Result<{ readonly projects: readonly ProjectSummary[] }>>;
  /** Never writes: opening the app changes no stored project. */
  readonly load: (id: string) => Promise<Result<Loaded>>;
  readonly save: (order: SaveOrder) => Promise<Result<{ readonly at: string }>>;
  /** Stores what the second copy holds; a record it takes the place of is kept as a backup first. */
  readonly bringBack: (copy: WholeCopy, commands?: readonly Command[]) => Promise<Result<object>>;
  /** Another history of a project, kept as a backup beside the one that goes on. */
  readonly keepApart: (copy: WholeCopy) => Promise<Result<object>>;
  /** Puts an opened file in the store; what stood under the same id is kept as a backup first. */
  readonly add: (
    opened: Extract<Opened, { ok: true }>,
    raw?: unknown,
    /** No state of this project anywhere is newer than this. */
    above?: number,
  ) => Promise<Result<object>>;
  readonly backup: (id: string, reason: BackupReason) => Promise<Result<object>>;
  /** Freezes the project as it is stored under the number it goes out by; a number is used once. */
  readonly issue: (id: string, edition: Edition) => Promise<Result<object>>;
  /** An edition as it was issued. */
  readonly issued: (
    backupId: number,
  ) => Promise<Result<{ readonly project: Project; readonly edition: Edition }>>;
  readonly remove: (id: string) => Promise<Result<object>>;
  /** The project, its backups and its list of edits; nothing of it can be brought back from here. */
  readonly erase: (id: string) => Promise<Result<object>>;
  readonly listBackups: (
    projectId?: string,
  ) => Promise<Result<{ readonly backups: readonly BackupSummary[] }>>;
  /** Today's state is set aside first, so a restore can itself be taken back. */
  readonly restore: (backupId: number, above?: number) => Promise<Result<Loaded>>;
  /** The project a backup is of. */
  readonly projectOfBackup: (backupId: number) => Promise<Result<{ readonly projectId: string }>>;
  readonly listCommands: (projectId: string) => Promise<Result<{ readonly commands: readonly Command[] }>>;
}

export function createProjectStore(database: Database, clock: () => string): ProjectStore {
  /** States this window tried to store without hearing whether it succeeded. */
  const tried = new Set<string>();
  const copy = (tables: Tables, row: ProjectRow, reason: BackupReason, edition?: Edition) =>
    addBackup(tables, {
      projectId: row.id,
      name: row.name,
      at: clock(),
      reason,
      formatVersion: row.formatVersion,
      document: row.document,
      ...(edition === undefined ? {} : { edition }),
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
          position: positionOfRow(row),
          migrated: opened.migrated,
          setAside: [...row.setAside, ...opened.setAside],
        };
      }),

    save: async ({ project, position, commands, after, setAside }) => {
      const saved = await database.run('writing', async (tables) => {
        const before = await tables.projects.get(project.id);
        // Checked in the same transaction as the write: between load and save, a newer window may have
        // rewritten the record.
        fitsToday(before);
        if (!before && after) throw new Refused({ kind: 'storedGone' });
        // A write that was given up for lost may have ended late: what it stored is this window's own.
        const isOwn = before?.tip !== undefined && tried.has(`${project.id} ${before.tip}`);
        const isAsLeft = before
          ? after !== null && before.revision === after.revision && (before.tip ?? '') === after.tip
          : after === null;
        if (!isAsLeft && !isOwn) throw new Refused({ kind: 'changedElsewhere' });
        tried.add(`${project.id} ${position.tip}`);
        const at = clock();
        if (before) {
          const reason = reasonToCopy(before, setAside, at);
          if (reason) await copy(tables, before, reason);
        }
        const row = rowOf(project, at, position, setAside);
        await tables.projects.put(row);
        await tables.commands.bulkAdd(commands.map((command) => ({ projectId: project.id, command })));
        await thinCommands(tables, project.id);
        return { at };
      });
      if (saved.ok) tried.delete(`${project.id} ${position.tip}`);
      return saved;
    },

    bringBack: (whole, commands = []) =>
      database.run('writing', async (tables) => {
        const before = await tables.projects.get(whole.id);
        fitsToday(before);
        fitsToday(whole);
        if (before) await copy(tables, before, 'copy');
        await tables.projects.put({
          id: whole.id,
          name: whole.name,
          changedAt: whole.at,
          formatVersion: whole.formatVersion,
          revision: whole.revision,
          tip: whole.tip,
          size: JSON.stringify(whole.document).length,
          document: whole.document,
          setAside: whole.setAside,
        });
        await tables.commands.bulkAdd(commands.map((command) => ({ projectId: whole.id, command })));
        return {};
      }),

    keepApart: (whole) =>
      database.run('writing', async (tables) => {
        await addBackup(tables, {
          projectId: whole.id,
          name: whole.name,
          at: clock(),
          reason: 'apart',
          formatVersion: whole.formatVersion,
          document: whole.document,
        });
        return {};
      }),

    add: ({ project, migrated, setAside }, raw, above = 0) =>
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
        const at = clock();
        const position = replacing(before, above, `file ${at}`);
        await tables.projects.put(rowOf(project, at, position, setAside));
        return {};
      }),

    backup: (id, reason) =>
      database.run('writing', async (tables) => {
        const row = await tables.projects.get(id);
        if (!row) throw new Refused({ kind: 'noSuchProject' });
        await copy(tables, row, reason);
        return {};
      }),

    issue: (id, edition) =>
      database.run('writing', async (tables) => {
        const row = await tables.projects.get(id);
        if (!row) throw new Refused({ kind: 'noSuchProject' });
        const all = await tables.backups.where('projectId').equals(id).toArray();
        if (all.some((backup) => backup.edition?.number === edition.number))
          throw new Refused({ kind: 'editionTaken', number: edition.number });
        await copy(tables, row, 'edition', edition);
        return {};
      }),

    issued: (backupId) =>
      database.run('reading', async (tables) => {
        const backup = await tables.backups.get(backupId);
        if (!backup?.edition) throw new Refused({ kind: 'noSuchBackup' });
        return { project: readable(backup).project, edition: backup.edition };
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

    erase: (id) =>
      database.run('writing', async (tables) => {
        await tables.projects.delete(id);
        await tables.commands.where('projectId').equals(id).delete();
        await tables.backups.where('projectId').equals(id).delete();
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

    projectOfBackup: (backupId) =>
      database.run('reading', async (tables) => {
        const backup = await tables.backups.get(backupId);
        if (!backup) throw new Refused({ kind: 'noSuchBackup' });
        return { projectId: backup.projectId };
      }),

    restore: (backupId, above = 0) =>
      database.run('writing', async (tables) => {
        const backup = await tables.backups.get(backupId);
        if (!backup) throw new Refused({ kind: 'noSuchBackup' });
        const opened = readable(backup);
        const before = await tables.projects.get(backup.projectId);
        fitsToday(before);
        if (before) await copy(tables, before, 'restore');
        const at = clock();
        const position = replacing(before, above, `backup ${at}`);
        await tables.projects.put(rowOf(opened.project, at, position, opened.setAside));
        return {
          project: opened.project,
          position,
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

const positionOfRow = (row: ProjectRow): Position => ({ revision: row.revision, tip: row.tip ?? '' });

const replacing = (before: ProjectRow | undefined, above: number, tip: string): Position => ({
  revision: Math.max(before?.revision ?? 0, above) + 1,
  tip,
});

/**
 * The list of edits keeps the newest of each project, and of the older ones those that decided something. A hundred more
 * are let in before it is cut, to cut seldom.
 */
export const commandsKept = 2_000;

async function thinCommands(tables: Tables, projectId: string): Promise<void> {
  const ofProject = tables.commands.where('projectId').equals(projectId);
  const count = await ofProject.count();
  if (count <= commandsKept + 100) return;
  const oldest = await ofProject.limit(count - commandsKept).toArray();
  const dropped = oldest.filter(({ command }) => !staysInList(command));
  await tables.commands.bulkDelete(dropped.map(({ seq }) => seq));
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

function rowOf(project: Project, at: string, position: Position, setAside: readonly SetAside[]): ProjectRow {
  return {
    id: project.id,
    name: project.name,
    changedAt: at,
    formatVersion: newestFormat,
    ...position,
    size: JSON.stringify(project).length,
    document: project,
    setAside,
  };
}
