import { newestFormat } from '../domain/versions/migrations.ts';
import { readable } from '../storage/backups.ts';
import type { Journal } from '../storage/copy/journal.ts';
import { pathOf, reach } from '../storage/copy/newest.ts';
import type { Position } from '../storage/copy/position.ts';
import type { SecondCopy } from '../storage/copy/secondCopy.ts';
import type { WholeCopy } from '../storage/copy/slots.ts';
import type { Line } from '../storage/copy/lines.ts';
import { Refused, type Result } from '../storage/problems.ts';
import type { Loaded } from '../storage/projectStore.ts';
import { replay } from '../storage/replay.ts';

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

export type Replayed = Result<{
  readonly loaded: Loaded;
  readonly done: readonly Line[];
  /** Why an edit no longer fit, which ended it there; '' where all were done. */
  readonly refused: string;
}>;

/** A copy and the edits after it, done again. A copy of a newer version is a problem in words, never a throw. */
export function replayed(base: WholeCopy | Loaded, lines: readonly Line[]): Replayed {
  try {
    const start = 'document' in base ? ofCopy(base) : base;
    const again = replay(start.project, lines);
    const last = again.done.at(-1);
    const position: Position = last ? { revision: last.revision, tip: last.command.id } : start.position;
    const loaded: Loaded = { ...start, project: again.project, position };
    return { ok: true, loaded, done: again.done, refused: again.says };
  } catch (error) {
    if (error instanceof Refused) return { ok: false, problem: error.problem };
    throw error;
  }
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

/** A project read without the database: its newest whole copy and every edit that leads on from it. */
export interface FromCopy {
  readonly loaded: Loaded;
  /** The states it went through; a database that answers later is known again by one of them. */
  readonly path: readonly Position[];
  readonly done: readonly Line[];
  readonly refused: string;
}

export async function fromCopy(
  id: string,
  { copies, journal }: { readonly copies: SecondCopy; readonly journal: Journal },
): Promise<Result<FromCopy>> {
  const looked = await copies.look(id);
  const copy = looked.ok ? looked.value.copy : null;
  if (!looked.ok || !copy) return { ok: false, problem: { kind: 'noSuchProject' } };
  const { lines } = reach(copy, [...looked.value.lines, ...journal.lines(id)]);
  const again = replayed(copy, lines);
  return again.ok ? { ...again, path: pathOf(copy, again.done) } : again;
}
