import { browserTimers, type Timers } from './timers.ts';

/**
 * One writer per project across windows. Two windows that both save would silently undo each other's work,
 * so the second one only reads, follows the first, and takes over when that closes.
 */
export type Role = 'deciding' | 'writer' | 'reader';

export interface Channel {
  readonly post: (message: unknown) => void;
  readonly listen: (hear: (message: unknown) => void) => void;
  readonly close: () => void;
}

export interface Locks {
  readonly request: LockManager['request'];
}

export interface TabGuardNeeds {
  readonly projectId: string;
  readonly tabId: string;
  readonly onRole: (role: 'writer' | 'reader') => void;
  /** The writer has saved this revision: a reader shows it. */
  readonly onSaved: (revision: number) => void;
  readonly locks?: Locks | undefined;
  readonly channel?: Channel | undefined;
  readonly timers?: Timers;
}

export interface TabGuard {
  readonly role: () => Role;
  readonly tellSaved: (revision: number) => void;
  /** Resolves when another window (or the next guard of this one) can have the project. */
  readonly release: () => Promise<void>;
}

type Message =
  | { readonly says: 'whoWrites'; readonly tab: string }
  | { readonly says: 'iWrite'; readonly tab: string }
  | { readonly says: 'bye'; readonly tab: string }
  | { readonly says: 'saved'; readonly tab: string; readonly revision: number };

export function createTabGuard(needs: TabGuardNeeds): TabGuard {
  let role: Role = 'deciding';
  let released = false;
  const become = (next: 'writer' | 'reader') => {
    if (released || role === next) return;
    role = next;
    needs.onRole(next);
  };
  const post = (message: Message) => needs.channel?.post(message);
  const turns = needs.locks
    ? byLock(needs.locks, needs.projectId, become)
    : byTalking(needs, () => role, become, post);

  needs.channel?.listen((raw) => {
    const message = raw as Message;
    if (released || message.tab === needs.tabId) return;
    if (message.says === 'saved') {
      if (role !== 'writer') needs.onSaved(message.revision);
    } else turns.hear?.(message);
  });
  turns.start();

  return {
    role: () => role,
    tellSaved: (revision) => post({ says: 'saved', tab: needs.tabId, revision }),
    release: async () => {
      if (released) return;
      released = true;
      await turns.stop();
      needs.channel?.close();
    },
  };
}

interface Turns {
  readonly start: () => void;
  readonly stop: () => Promise<void>;
  readonly hear?: (message: Exclude<Message, { says: 'saved' }>) => void;
}

/** The browser itself gives the lock to one window and hands it on when that window is closed or crashes. */
function byLock(locks: Locks, projectId: string, become: (role: 'writer' | 'reader') => void): Turns {
  const name = `latchward-project-${projectId}`;
  const waiting = new AbortController();
  let letGo: () => void = () => undefined;
  /** The browser frees the lock a little after it was let go; asking again before that would find it taken. */
  let freed: Promise<unknown> = Promise.resolve();
  const hold = () =>
    new Promise<void>((resolve) => {
      letGo = resolve;
      become('writer');
    });
  const ignoreAbort = () => undefined;
  return {
    start: () => {
      freed = locks
        .request(name, { ifAvailable: true }, async (lock) => {
          if (lock) {
            if (!waiting.signal.aborted) await hold();
            return;
          }
          become('reader');
          freed = locks.request(name, { signal: waiting.signal }, hold).catch(ignoreAbort);
        })
        // A browser that refuses locks altogether must not leave the app waiting for ever; every write still
        // checks the revision.
        .catch(() => become('writer'));
    },
    stop: async () => {
      waiting.abort();
      letGo();
      await freed;
    },
  };
}

const answerTime = 300;
const lookAgain = 2_000;
const silencesAllowed = 3;

/**
 * Without locks the windows talk: whoever asks and hears nothing writes; of two that claim at once the smaller
 * id stays. A reader asks again from time to time, because a crashed window says no good-bye. The revision
 * checked in every write still stands behind this.
 */
function byTalking(
  needs: TabGuardNeeds,
  role: () => Role,
  become: (role: 'writer' | 'reader') => void,
  post: (message: Message) => void,
): Turns {
  const timers = needs.timers ?? browserTimers;
  let timer: unknown;
  let silences = 0;
  const ask = () => {
    post({ says: 'whoWrites', tab: needs.tabId });
    timer = timers.set(
      () => {
        silences += 1;
        if (role() === 'deciding' || silences >= silencesAllowed) claim();
        else ask();
      },
      role() === 'deciding' ? answerTime : lookAgain,
    );
  };
  const claim = () => {
    timers.clear(timer);
    become('writer');
    post({ says: 'iWrite', tab: needs.tabId });
  };
  const yieldTo = () => {
    silences = 0;
    timers.clear(timer);
    become('reader');
    timer = timers.set(ask, lookAgain);
  };
  return {
    start: () => {
      if (needs.channel) ask();
      // Nothing to talk through: the revision check is then the only guard.
      else become('writer');
    },
    stop: () => {
      timers.clear(timer);
      if (role() === 'writer') post({ says: 'bye', tab: needs.tabId });
      return Promise.resolve();
    },
    hear: (message) => {
      const now = role();
      if (message.says === 'whoWrites') {
        if (now === 'writer') post({ says: 'iWrite', tab: needs.tabId });
        // Both are deciding: the smaller id goes first, the other hears of it and reads.
        else if (now === 'deciding' && needs.tabId < message.tab) claim();
      } else if (message.says === 'iWrite') {
        if (now !== 'writer') yieldTo();
        else if (message.tab < needs.tabId) yieldTo();
        else post({ says: 'iWrite', tab: needs.tabId });
      } else if (now === 'reader') {
        // The writer closed. Waiting a moment that differs per window would be slower than a clash is likely.
        claim();
      }
    },
  };
}

export function browserChannel(projectId: string): Channel | undefined {
  if (typeof BroadcastChannel === 'undefined') return undefined;
  const channel = new BroadcastChannel(`latchward-project-${projectId}`);
  return {
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- only windows have a target origin
    post: (message) => channel.postMessage(message),
    listen: (hear) => {
      channel.addEventListener('message', (event: MessageEvent<unknown>) => hear(event.data));
    },
    close: () => channel.close(),
  };
}

/** Missing on pages served without https. */
export function browserLocks(): Locks | undefined {
  const { locks } = navigator as { readonly locks?: LockManager };
  return locks ? { request: locks.request.bind(locks) } : undefined;
}
