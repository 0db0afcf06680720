import type { Command } from '../domain/commands/command.ts';
import { type Position, samePosition } from '../storage/copy/position.ts';
import type { WholeCopy } from '../storage/copy/slots.ts';
import { isOutOfReach, type Result } from '../storage/problems.ts';
import type { ProjectStore } from '../storage/projectStore.ts';
import type { FromCopy } from './wholeCopy.ts';

/** A project that was opened from its second copy while the database is out of reach. */
export interface Detached {
  readonly path: readonly Position[];
  readonly done: FromCopy['done'];
}

/** How the database takes the project back. */
export type Rejoined = Result<{
  /** What the database holds now; null where it holds no such project. */
  readonly stored: Position | null;
  /** Edits that the database lacks although they were accepted before this window opened the project. */
  readonly missed: readonly Command[];
  /** Already written, whole. */
  readonly written: boolean;
  readonly says: string;
}>;

const answersAgain = 'The database of this browser answers again, and the project is stored there as well.';

/**
 * Asks the database again. What it holds may be a state this project came through, none, or another history: then
 * what is on the screen goes on and the other one is kept as a backup.
 */
export async function rejoin(
  whole: WholeCopy,
  { path, done }: Detached,
  projects: ProjectStore,
  commands: readonly Command[],
): Promise<Rejoined> {
  const loaded = await projects.load(whole.id);
  if (!loaded.ok) {
    const { problem } = loaded;
    if (problem.kind === 'noSuchProject') {
      const missed = done.map((line) => line.command);
      return { ok: true, stored: null, missed, written: false, says: answersAgain };
    }
    if (isOutOfReach(problem)) return { ok: false, problem: { kind: 'onlyInCopy', because: problem } };
    if (problem.kind !== 'unreadable') return { ok: false, problem };
  } else if (path.some((one) => samePosition(one, loaded.position))) {
    const missed = done
      .filter((line) => line.revision > loaded.position.revision)
      .map((line) => line.command);
    return { ok: true, stored: loaded.position, missed, written: false, says: answersAgain };
  }
  const brought = await projects.bringBack(whole, commands);
  if (!brought.ok) return { ok: false, problem: { kind: 'onlyInCopy', because: brought.problem } };
  return {
    ok: true,
    stored: { revision: whole.revision, tip: whole.tip },
    missed: [],
    written: true,
    says: `${answersAgain} It held another state of “${whole.name}”. Both are kept: what is on the screen is open, the other one is the newest backup of this project on the Files page. Compare them before you go on.`,
  };
}
