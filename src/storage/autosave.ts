import { isFinal, type StorageProblem, storageProblemInWords } from './problems.ts';
import { browserTimers, type Timers } from './timers.ts';

/** What the header says about saving. "Saved" only after the database has said that the write is complete. */
export type SavingState =
  | { readonly kind: 'saved' }
  | { readonly kind: 'waiting' }
  | { readonly kind: 'saving' }
  | { readonly kind: 'failed'; readonly says: string; readonly tries: number }
  | {
      readonly kind: 'readOnly';
      readonly says: string;
      /** The stored project is gone, and what is on the screen can be stored in its place. */
      readonly canStoreAgain?: true;
    };

export type Written = { readonly ok: true } | { readonly ok: false; readonly problem: StorageProblem };

export interface AutosaveNeeds<Document, Entry> {
  /** Writes the whole document and the log entries in one transaction. */
  readonly write: (document: Document, entries: readonly Entry[]) => Promise<Written>;
  readonly onState: (state: SavingState) => void;
  readonly timers?: Timers;
  /** Typing is saved when it pauses this long, in milliseconds. */
  readonly pause?: number;
  /** Typing without a pause is saved after this long, in milliseconds. */
  readonly atLatest?: number;
  /** Waits between tries after a failure, in milliseconds; the last one repeats. */
  readonly backoff?: readonly number[];
}

export interface Autosave<Document, Entry> {
  readonly state: () => SavingState;
  /** From here on it may write. Before the first load a write would put an empty document over the stored one. */
  readonly begin: () => void;
  /** As `begin`, where it is known that writing fails for now: says so at once and tries again. */
  readonly beginFailing: (says: string) => void;
  /**
   * Hands over the newest document; log entries pile up until a write has taken them. An entry that joins the
   * last one takes its place, so that typing a sentence does not log every key.
   */
  readonly changed: (document: Document, entry?: Entry, joinsLast?: boolean) => void;
  /** Writes now what is unsaved; resolves when nothing is left to write, or when writing failed. */
  readonly flush: () => Promise<void>;
  readonly unsaved: () => boolean;
  /** Stops writing until `begin`, says why, and keeps what is unsaved. */
  readonly stop: (says: string) => void;
  /** Another document takes the place of this one: drops what waits and stops writing until `begin`. */
  readonly replaced: () => void;
}

const defaultBackoff = [1_000, 2_000, 5_000, 15_000, 30_000] as const;

export function createAutosave<Document, Entry>(
  needs: AutosaveNeeds<Document, Entry>,
): Autosave<Document, Entry> {
  const timers = needs.timers ?? browserTimers;
  const backoff = needs.backoff ?? defaultBackoff;
  let state: SavingState = { kind: 'saved' };
  let mayWrite = false;
  /** Set while something is unsaved. Always the whole document, so no failed write can leave a gap. */
  let newest: { readonly document: Document } | undefined;
  let entries: readonly Entry[] = [];
  /** How many of the entries a running write has taken. */
  let inWrite = 0;
  let timer: unknown;
  let latest: unknown;
  let running: Promise<void> | undefined;
  let tries = 0;
  /** Raised by `replaced`: the end of a write that began before it must not report anything. */
  let era = 0;

  const show = (next: SavingState) => {
    state = next;
    needs.onState(next);
  };
  const stopTimer = () => {
    if (timer !== undefined) timers.clear(timer);
    timer = undefined;
    if (latest !== undefined) timers.clear(latest);
    latest = undefined;
  };
  /** Waits for a pause in typing, but not for ever. */
  const writeSoon = () => {
    show({ kind: 'waiting' });
    if (timer !== undefined) timers.clear(timer);
    timer = timers.set(() => void writeNow(), needs.pause ?? 400);
    latest ??= timers.set(() => void writeNow(), needs.atLatest ?? 2_000);
  };
  const writeIn = (milliseconds: number) => {
    stopTimer();
    timer = timers.set(() => void writeNow(), milliseconds);
  };

  async function attempt(): Promise<void> {
    const taken = newest;
    if (!taken) return;
    const [takenEntries, begun] = [entries, era];
    // A failure stays on screen while it is tried again; "saving" would hide it for seconds at a time.
    if (state.kind !== 'failed') show({ kind: 'saving' });
    inWrite = takenEntries.length;
    const written = await tryToWrite(taken.document, takenEntries);
    inWrite = 0;
    if (begun !== era) {
      // The write belonged to a document that was replaced; what was edited since still has to go out.
      if (mayWrite && newest) writeIn(0);
      return;
    }
    if (written.ok) {
      tries = 0;
      entries = entries.slice(takenEntries.length);
      if (newest === taken) newest = undefined;
    }
    // Stopped while the write ran: the reason stays on screen.
    if (!mayWrite) return;
    if (!written.ok) {
      tries += 1;
      const says = storageProblemInWords(written.problem);
      if (isFinal(written.problem)) {
        mayWrite = false;
        const isGone = written.problem.kind === 'storedGone';
        show({ kind: 'readOnly', says, ...(isGone && { canStoreAgain: true }) });
        return;
      }
      show({ kind: 'failed', says, tries });
      writeIn(backoff[Math.min(tries, backoff.length) - 1] ?? 30_000);
      return;
    }
    if (newest) {
      // Edited while the write ran.
      writeSoon();
    } else show({ kind: 'saved' });
  }

  /** A write that throws is a failed write: an unseen exception would leave "saving" on screen for ever. */
  async function tryToWrite(document: Document, list: readonly Entry[]): Promise<Written> {
    try {
      return await needs.write(document, list);
    } catch (error) {
      return {
        ok: false,
        problem: { kind: 'writeFailed', says: error instanceof Error ? error.message : String(error) },
      };
    }
  }

  /** One write at a time: two at once could finish in the wrong order. */
  function writeNow(): Promise<void> {
    if (!mayWrite || !newest) return Promise.resolve();
    stopTimer();
    running ??= attempt().finally(() => {
      running = undefined;
    });
    return running;
  }

  /** Writes until nothing is left; a failure ends it, because it is tried again later anyway. */
  async function drain(triesBefore: number): Promise<void> {
    if (!mayWrite || !newest || tries !== triesBefore) return;
    await writeNow();
    await drain(triesBefore);
  }

  return {
    state: () => state,
    begin: () => {
      mayWrite = true;
      tries = 0;
      if (newest) writeSoon();
      else show({ kind: 'saved' });
    },
    beginFailing: (says) => {
      mayWrite = true;
      tries = 1;
      show({ kind: 'failed', says, tries });
      writeIn(backoff[0] ?? 30_000);
    },
    changed: (document, entry, joinsLast = false) => {
      newest = { document };
      if (entry !== undefined) {
        const kept = joinsLast && entries.length > inWrite ? entries.slice(0, -1) : entries;
        entries = [...kept, entry];
      }
      if (!mayWrite || state.kind === 'failed' || running) return;
      writeSoon();
    },
    flush: async () => {
      await running;
      await drain(tries);
    },
    unsaved: () => newest !== undefined,
    stop: (says) => {
      mayWrite = false;
      stopTimer();
      show({ kind: 'readOnly', says });
    },
    replaced: () => {
      era += 1;
      mayWrite = false;
      tries = 0;
      stopTimer();
      newest = undefined;
      entries = [];
      inWrite = 0;
    },
  };
}
