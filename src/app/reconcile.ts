import { counted } from '../domain/text/counted.ts';
import { newestFormat } from '../domain/versions/migrations.ts';
import type { Journal } from '../storage/copy/journal.ts';
import { type Newest, newestOf } from '../storage/copy/newest.ts';
import type { Position } from '../storage/copy/position.ts';
import type { SecondCopy } from '../storage/copy/secondCopy.ts';
import type { WholeCopy } from '../storage/copy/slots.ts';
import { readable } from '../storage/backups.ts';
import type { Result } from '../storage/problems.ts';
import type { Loaded, ProjectStore } from '../storage/projectStore.ts';
import { replay } from '../storage/replay.ts';

export interface Found {
  readonly loaded: Loaded;
  /** Where the second copy stands; undefined when it has none or cannot be read. */
  readonly kept: Position | undefined;
  /** What the database and the second copy disagreed about, in words; '' where they agreed. */
  readonly says: string;
}

export interface ReconcileNeeds {
  readonly projects: ProjectStore;
  readonly copies: SecondCopy;
  readonly journal: Journal;
}

/**
 * Reads a project from the database and from the second copy, and goes on from the newer whole state. Only the
 * window that writes may ask: what the other store lacks is stored at once.
 */
export async function reconcile(id: string, needs: ReconcileNeeds): Promise<Result<Found>> {
  const { projects, copies, journal } = needs;
  const [stored, looked] = await Promise.all([projects.load(id), copies.look(id)]);
  const copy = looked.ok ? looked.value.copy : null;
  const lines = [...(looked.ok ? looked.value.lines : []), ...journal.lines(id)];
  const isGone = !stored.ok && stored.problem.kind === 'noSuchProject';
  if (!stored.ok && !isGone) return stored;
  const newest = newestOf(stored.ok ? stored.position : undefined, copy ?? undefined, lines);
  if (!newest) return stored as Result<Found>;
  if (stored.ok && newest.lines.length === 0 && newest.base === 'database') {
    const kept = newest.differs === 'no' ? newest.at : undefined;
    return { ok: true, loaded: stored, kept, says: '' };
  }
  const base = newest.base === 'database' && stored.ok ? stored : ofCopy(copy as WholeCopy);
  const again = replay(base.project, newest.lines);
  const last = again.done.at(-1);
  const position: Position = last ? { revision: last.revision, tip: last.command.id } : base.position;
  const loaded: Loaded = { ...base, project: again.project, position };
  const brought =
    newest.base === 'copy'
      ? await projects.bringBack(wholeOf(loaded, copy?.at ?? ''))
      : await projects.save({
          project: loaded.project,
          position,
          commands: again.done.map((line) => line.command),
          after: base.position,
          setAside: loaded.setAside,
        });
  if (!brought.ok) return brought;
  return { ok: true, loaded, kept: undefined, says: inWords(loaded, newest, again.says) };
}

function ofCopy(copy: WholeCopy): Loaded {
  const opened = readable(copy);
  return {
    project: opened.project,
    position: { revision: copy.revision, tip: copy.tip },
    migrated: opened.migrated,
    setAside: [...copy.setAside, ...opened.setAside],
  };
}

/** A project as the second copy keeps it. */
export function wholeOf(loaded: Omit<Loaded, 'migrated'>, at: string): WholeCopy {
  return {
    id: loaded.project.id,
    name: loaded.project.name,
    at,
    formatVersion: newestFormat,
    document: loaded.project,
    setAside: loaded.setAside,
    ...loaded.position,
  };
}

function inWords({ project }: Loaded, { base, differs, lines }: Newest, refused: string): string {
  const edits = counted(lines.length, 'edit', 'edits');
  const stopped = refused === '' ? '' : ` Then an edit no longer fit: ${refused}`;
  if (base === 'database') {
    return `“${project.name}”: ${edits} had not reached the database when the page was closed. The second copy had them, and they are back.${stopped}`;
  }
  const lost =
    differs === 'missing'
      ? `The browser lost the stored project “${project.name}”. It was brought back from the second copy. Its backups and list of edits were in the lost database.`
      : `The database held an older state of “${project.name}” than the second copy. The newer one was brought back, and the older one is kept as a backup.`;
  return `${lost} Check the last openings you worked on, and save a copy to a file.${stopped}`;
}
