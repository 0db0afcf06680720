import type { Journal } from '../storage/copy/journal.ts';
import type { Line } from '../storage/copy/lines.ts';
import { type Position, samePosition } from '../storage/copy/position.ts';
import type { SecondCopy } from '../storage/copy/secondCopy.ts';
import type { WholeCopy } from '../storage/copy/slots.ts';
import type { Timers } from '../storage/timers.ts';

/** The state that the second copy leads to, and how many lines lead there. */
export interface KeptAt extends Position {
  readonly lines: number;
}

export interface LineLogNeeds {
  readonly copies: SecondCopy;
  readonly journal: Journal;
  /** The whole project as it is now, for a new slot. */
  readonly whole: () => WholeCopy;
  /** Said when the second copy fails, and '' when it works again. */
  readonly onTrouble: (says: string) => void;
  readonly timers: Timers;
}

/** The edits of the project that is written here, on their way into the second copy. */
export interface LineLog {
  /**
   * From here on edits are logged. `kept` is what the second copy holds; anything else is written whole at once. Ends when
   * an edit would go to the disk without waiting for anything, or when that takes too long.
   */
  readonly begin: (projectId: string, kept: KeptAt | undefined) => Promise<void>;
  readonly stop: () => void;
  /** Writes the edit before it is painted. */
  readonly accept: (line: Line) => void;
  /** Writes a whole slot: the project changed by something that is no edit, or its lines have become many. */
  readonly putWhole: () => Promise<void>;
  /** The database has this state, so where there is no second copy the journal need not hold it any longer. */
  readonly saved: (revision: number) => void;
  /** Ends when everything accepted so far is confirmed or has failed. */
  readonly settled: () => Promise<void>;
  /** Every accepted edit can be found again at the next start. */
  readonly isKept: () => boolean;
}

/** A start reads the slot and then does these again, so they may not become many. */
export const mostLines = 300;

/** How long a project may be kept from the user until its log is open; the page says what the second copy lacks. */
export const longestWaitMs = 2_000;

export function createLineLog({ copies, journal, whole, onTrouble, timers }: LineLogNeeds): LineLog {
  let projectId: string | undefined;
  let lines = 0;
  let working = true;
  /** Revisions that only memory holds. */
  const loose = new Set<number>();
  let last: Promise<unknown> = Promise.resolve();

  /** Without what they came to: it would be kept inside one another for as long as the page is open. */
  const alsoWaitFor = (one: Promise<void>) => {
    last = Promise.all([last, one]).then(() => undefined);
  };

  const confirmed = (id: string, revision: number) => {
    if (id === projectId) for (const one of loose) if (one <= revision) loose.delete(one);
    for (const line of journal.lines(id)) {
      if (line.revision <= revision) journal.drop(id, line.revision);
    }
  };
  const putWhole = async () => {
    if (projectId === undefined) return;
    const copy = whole();
    lines = 0;
    const putting = copies.put(copy).then((put) => {
      working = put.ok;
      onTrouble(put.ok ? '' : put.says);
      if (put.ok) confirmed(copy.id, copy.revision);
    });
    alsoWaitFor(putting);
    await last;
  };

  const soon = (opening: Promise<unknown>) =>
    new Promise<void>((resolve) => {
      const timer = timers.set(resolve, longestWaitMs);
      void opening.then(() => {
        timers.clear(timer);
        resolve();
      });
    });

  return {
    begin: async (id, kept) => {
      projectId = id;
      lines = kept?.lines ?? 0;
      working = true;
      loose.clear();
      const now = whole();
      const isWhole = kept !== undefined && samePosition(kept, now);
      if (isWhole) onTrouble('');
      await soon(isWhole ? copies.openLog(id) : putWhole());
    },
    stop: () => {
      projectId = undefined;
      loose.clear();
      void copies.release();
    },
    accept: (line) => {
      if (projectId === undefined) return;
      const id = projectId;
      if (!journal.keep(id, line)) loose.add(line.revision);
      lines += 1;
      if (!working) {
        void putWhole();
        return;
      }
      const appending = copies.append(id, [line]).then((appended) => {
        if (appended.ok) {
          loose.delete(line.revision);
          journal.drop(id, line.revision);
        } else {
          working = false;
          onTrouble(appended.says);
        }
      });
      alsoWaitFor(appending);
      // The line goes first: a slot takes long enough to be killed in it.
      if (lines > mostLines) void putWhole();
    },
    putWhole,
    saved: (revision) => {
      if (projectId !== undefined && !working) confirmed(projectId, revision);
    },
    settled: async () => {
      await last;
    },
    isKept: () => loose.size === 0,
  };
}
