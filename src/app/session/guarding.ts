import { type Channel, createTabGuard, type Locks, type TabGuard } from '../../storage/tabGuard.ts';
import type { Timers } from '../../storage/timers.ts';
import type { Kit, Told } from './kit.ts';

export type Role = 'writer' | 'reader';
export interface Stood {
  readonly guard: TabGuard;
  readonly role: Role;
}

interface Needs {
  readonly tabId: string;
  readonly locks: Locks | undefined;
  readonly channel: (projectId: string) => Channel | undefined;
  readonly timers: Timers | undefined;
  /** Of the shown project, after it was opened. */
  readonly changeRole: (role: Role) => Promise<void>;
  readonly follow: (saved: number) => Promise<void>;
}

export const otherWindow =
  'This project is open in another window, so it can only be read here. It can be edited here as soon as the other window is closed.';

const heldElsewhere = 'This project is open in another window. Close that window first; nothing was changed.';

export type Guarding = ReturnType<typeof createGuarding>;

/** Which window writes a project: one guard for the shown one, and others for as long as something is done to them. */
export function createGuarding({ inTurn, shown }: Kit, needs: Needs) {
  let guard: TabGuard | undefined;

  /** The guard of a project, once it is known whether this window may write. */
  function stand(id: string): Promise<Stood> {
    return new Promise((resolve) => {
      let decided = false;
      const made: TabGuard = createTabGuard({
        projectId: id,
        tabId: needs.tabId,
        locks: needs.locks,
        channel: needs.channel(id),
        ...(needs.timers ? { timers: needs.timers } : {}),
        onRole: (role) => {
          if (decided) {
            void inTurn(() => (guard === made ? needs.changeRole(role) : Promise.resolve()));
            return;
          }
          decided = true;
          // A role may be known before `made` is assigned.
          queueMicrotask(() => resolve({ guard: made, role }));
        },
        onSaved: (saved) => {
          void inTurn(() => (guard === made ? needs.follow(saved) : Promise.resolve()));
        },
      });
    });
  }

  /** Takes the place of the guard of the project before. */
  async function take(next: TabGuard | undefined): Promise<void> {
    const before = guard;
    guard = next;
    if (before !== next) await before?.release();
  }

  /** Does something to a project that no other window may be writing meanwhile. */
  async function guarded(id: string, work: () => Promise<Told>): Promise<Told> {
    if (guard && id === shown().id) {
      return guard.role() === 'reader' ? { ok: false, says: otherWindow } : work();
    }
    const stood = await stand(id);
    try {
      return stood.role === 'reader' ? { ok: false, says: heldElsewhere } : await work();
    } finally {
      await stood.guard.release();
    }
  }

  /** Who stands guard over a project that is about to be shown. */
  const standFor = (id: string): Promise<Stood> =>
    guard && id === shown().id ? Promise.resolve({ guard, role: roleOf(guard) }) : stand(id);

  /** The project is not shown after all. */
  const leaveBe = async (stood: Stood): Promise<void> => {
    if (stood.guard !== guard) await stood.guard.release();
  };

  return { current: () => guard, standFor, leaveBe, take, guarded };
}

const roleOf = (one: TabGuard): Role => (one.role() === 'writer' ? 'writer' : 'reader');
