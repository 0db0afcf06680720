import { counted } from '../domain/text/counted.ts';
import type { Journal } from '../storage/copy/journal.ts';
import { type Newest, newestOf, reach } from '../storage/copy/newest.ts';
import { samePosition } from '../storage/copy/position.ts';
import type { SecondCopy } from '../storage/copy/secondCopy.ts';
import type { WholeCopy } from '../storage/copy/slots.ts';
import { type Result, storageProblemInWords } from '../storage/problems.ts';
import type { Loaded, ProjectStore } from '../storage/projectStore.ts';
import type { KeptAt } from './lineLog.ts';
import { replayed, wholeOf } from './wholeCopy.ts';

export interface Found {
  readonly loaded: Loaded;
  /** Where the second copy stands; undefined when it has none or cannot be read. */
  readonly kept: KeptAt | undefined;
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
  // By its own lines: one that only the journal has does not outlive the browser.
  const own = looked.ok && copy ? reach(copy, looked.value.lines) : undefined;
  const kept = own && samePosition(own.at, newest.at) ? { ...own.at, lines: own.lines.length } : undefined;
  const apart = stored.ok && copy ? await keepApart(stored, copy, newest, projects) : '';
  if (stored.ok && newest.lines.length === 0 && newest.base === 'database') {
    return { ok: true, loaded: stored, kept, says: apart };
  }
  const again = replayed(
    newest.base === 'database' && stored.ok ? stored : (copy as WholeCopy),
    newest.lines,
  );
  if (!again.ok) {
    if (!stored.ok) return again;
    const says = `The second copy of “${stored.project.name}” cannot be read: ${storageProblemInWords(again.problem)}`;
    return { ok: true, loaded: stored, kept: undefined, says };
  }
  const { loaded, done } = again;
  const commands = done.map((line) => line.command);
  const brought =
    newest.base === 'copy'
      ? await projects.bringBack(wholeOf(loaded, copy?.at ?? ''), commands)
      : await projects.save({
          project: loaded.project,
          position: loaded.position,
          commands,
          after: stored.ok ? stored.position : null,
          setAside: loaded.setAside,
        });
  if (!brought.ok) return brought;
  const says = [apart, inWords(loaded, newest, again.refused)].filter((one) => one !== '').join(' ');
  return { ok: true, loaded, kept: again.refused === '' ? kept : undefined, says };
}

/**
 * Two histories of one project cannot be joined and neither may be dropped: the database goes on, what the second
 * copy holds becomes a backup. Returns what is to be said, '' where the copy is only an older state.
 */
async function keepApart(
  stored: Loaded,
  copy: WholeCopy,
  { other, differs }: Newest,
  projects: ProjectStore,
): Promise<string> {
  if (!other) return '';
  const again = replayed(copy, other.lines);
  if (!again.ok) return '';
  const { loaded } = again;
  if (JSON.stringify(loaded.project) === JSON.stringify(stored.project)) return '';
  if (differs === 'copyBehind') {
    const listed = await projects.listCommands(loaded.project.id);
    if (listed.ok && listed.commands.some((command) => command.id === other.at.tip)) return '';
  }
  const kept = await projects.keepApart(wholeOf(loaded, copy.at));
  const { name } = stored.project;
  const both =
    differs === 'apart'
      ? `The database and the second copy of “${name}” both hold ${counted(stored.position.revision, 'edit', 'edits')}, and they are not the same.`
      : `The second copy of “${name}” holds edits that are not in the database, which has more of its own.`;
  return kept.ok
    ? `${both} Both are kept: the state of the database is open, the other one is the newest backup of this project on the Files page. Compare them before you go on.`
    : `${both} The state of the database is open. The other one could not be kept as a backup: ${storageProblemInWords(kept.problem)}`;
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
