import type { Command } from '../../domain/commands/command.ts';
import type { Project } from '../../domain/model/project.ts';
import { createAutosave } from '../../storage/autosave.ts';
import type { Position } from '../../storage/copy/position.ts';
import type { Result } from '../../storage/problems.ts';
import { browserTimers, type Timers } from '../../storage/timers.ts';
import { rejoin } from '../detached.ts';
import { createLineLog } from '../lineLog.ts';
import { storedAt } from '../standing.ts';
import type { AcceptedHow } from '../store.ts';
import { wholeOf } from '../wholeCopy.ts';
import type { Kit } from './kit.ts';

/** What autosave is handed: the project, and which state of it this is. */
interface Handed {
  readonly project: Project;
  readonly position: Position;
}

interface Hooks {
  /** The database answers after all, and nothing was done meanwhile. */
  readonly startAgain: () => Promise<Result<object>>;
  readonly saved: (revision: number) => void;
}

export type Writing = ReturnType<typeof createWriting>;

/** Every edit goes into the line log at once and into the database soon after; this is the only way in. */
export function createWriting(kit: Kit, timers: Timers | undefined, { startAgain, saved }: Hooks) {
  const { clock, copies, ids, journal, known, projects, shown, standing, store } = kit;

  const log = createLineLog({
    copies,
    journal,
    timers: timers ?? browserTimers,
    whole: () => wholeOf({ project: shown(), position: standing.now, setAside: standing.setAside }, clock()),
    onTrouble: (says) => {
      store.getState().setOneCopy(says);
      if (says === '' || standing.base.kind !== 'detached') return;
      store.getState().tell({
        kind: 'problem',
        says: `Neither the database nor the second copy takes your edits now (${says}). Save a copy to a file before you close this page.`,
      });
    },
  });

  const autosave = createAutosave<Handed, Command>({
    write: async ({ project, position }, entries) => {
      if (standing.base.kind === 'standIn' && isUntouched()) return startAgain();
      const joined = await join({ project, position }, entries);
      if (!joined.ok) return joined;
      const written = joined.written
        ? { ok: true as const, at: clock() }
        : await projects.save({
            project,
            position,
            commands: joined.commands,
            after: storedAt(standing),
            setAside: standing.setAside,
          });
      if (!written.ok || project.id !== shown().id) return written;
      const stoodIn = standing.base.kind === 'standIn';
      standing.move({ kind: 'saved', at: position });
      if (stoodIn) {
        const says = 'The database of this browser answers again. What it holds is listed on the Files page.';
        store.getState().tell({ kind: 'told', says });
      }
      // "Saved" is said when both copies have it; a second copy that fails says so by itself.
      await log.settled();
      log.saved(position.revision);
      known.note(project.id, { name: project.name, revision: position.revision, savedAt: written.at });
      saved(position.revision);
      return written;
    },
    onState: (saving) => store.getState().setSaving(saving),
    ...(timers ? { timers } : {}),
  });

  const isUntouched = () => {
    const { past, future } = store.getState().document;
    return past.length + future.length === 0;
  };

  /** Finds out what the database holds of a project that was opened without it. */
  async function join(
    { project, position }: Handed,
    commands: readonly Command[],
  ): Promise<Result<{ readonly written: boolean; readonly commands: readonly Command[] }>> {
    const { base, setAside } = standing;
    if (base.kind !== 'detached') return { ok: true, written: false, commands };
    const whole = wholeOf({ project, position, setAside }, clock());
    const joined = await rejoin(whole, base, projects, commands);
    if (!joined.ok) return joined;
    standing.move({ kind: 'rejoined', stored: joined.stored });
    store.getState().tell({ kind: 'told', says: joined.says });
    return { ok: true, written: joined.written, commands: [...joined.missed, ...commands] };
  }

  function accepted(command: Command, project: Project, how: AcceptedHow): void {
    const after = standing.now.tip;
    standing.move({ kind: 'changed', tip: command.id });
    const { now } = standing;
    log.accept({ revision: now.revision, command, after, takingBack: how.takingBack });
    autosave.changed({ project, position: now }, command, how.joinsLast);
  }

  /** The project changed by something that is no edit of its own. */
  function changedWhole(): void {
    standing.move({ kind: 'changed', tip: ids() });
    void log.putWhole();
    autosave.changed({ project: shown(), position: standing.now });
  }

  return { log, autosave, isUntouched, accepted, changedWhole };
}
