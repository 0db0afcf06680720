import { browserTimers, type Timers } from '../timers.ts';
import type { Answered, Asked } from './copyWorker.ts';
import type { Kept } from './keeper.ts';
import type { Line } from './lines.ts';
import type { WholeCopy } from './slots.ts';
import type { Call } from './turns.ts';

export type Answer<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly says: string };

/** The second copy as a page asks for it: every call ends, with a sentence where it fails. */
export interface SecondCopy {
  readonly ids: () => Promise<Answer<readonly string[]>>;
  readonly look: (id: string) => Promise<Answer<Kept>>;
  readonly put: (copy: WholeCopy) => Promise<Answer<unknown>>;
  readonly append: (id: string, lines: readonly Line[]) => Promise<Answer<unknown>>;
  /** Makes ready for the first line of a project. */
  readonly openLog: (id: string) => Promise<Answer<unknown>>;
  /** Lets go of the files, so that another window can write them. */
  readonly release: () => Promise<Answer<unknown>>;
  readonly remove: (id: string) => Promise<Answer<unknown>>;
  readonly putPhoto: (sha256: string, bytes: Uint8Array) => Promise<Answer<unknown>>;
  readonly photo: (sha256: string) => Promise<Answer<Uint8Array | null>>;
  readonly dropPhotos: (names: readonly string[]) => Promise<Answer<unknown>>;
  readonly close: () => void;
}

/** The side of a worker that a page sees. */
export interface Port {
  readonly post: (asked: Asked) => void;
  readonly listen: (hear: (answered: Answered) => void, broken: (says: string) => void) => void;
  readonly close: () => void;
}

/** How long the worker may take before the page goes on without it, in milliseconds. */
const limits: Record<Call, number> = {
  ids: 10_000,
  look: 10_000,
  put: 30_000,
  append: 10_000,
  openLog: 10_000,
  release: 10_000,
  remove: 10_000,
  putPhoto: 10_000,
  photo: 10_000,
  dropPhotos: 10_000,
};

export function createSecondCopy(
  open: () => Port | undefined = browserWorker,
  timers: Timers = browserTimers,
): SecondCopy {
  let port: Port | undefined;
  let broken: string | undefined;
  let turns = 0;
  const waiting = new Map<number, (answer: Answer<unknown>) => void>();
  const settle = (turn: number, answer: Answer<unknown>) => {
    waiting.get(turn)?.(answer);
    waiting.delete(turn);
  };
  const breaks = (says: string) => {
    broken = says;
    for (const turn of waiting.keys()) settle(turn, { ok: false, says });
  };
  const start = () => {
    if (port || broken !== undefined) return;
    try {
      port = open();
    } catch (error) {
      broken = error instanceof Error ? error.message : String(error);
    }
    if (!port) broken ??= 'this browser has no private file system for it';
    port?.listen(
      (answered) =>
        settle(
          answered.turn,
          answered.ok ? { ok: true, value: answered.value } : { ok: false, says: answered.says },
        ),
      breaks,
    );
  };
  const ask = <T>(call: Call, ...given: readonly unknown[]): Promise<Answer<T>> => {
    start();
    if (!port || broken !== undefined) return Promise.resolve({ ok: false, says: broken ?? 'it is closed' });
    const { post } = port;
    turns += 1;
    const turn = turns;
    return new Promise((resolve) => {
      const timer = timers.set(
        () => settle(turn, { ok: false, says: `it has not answered for ${limits[call] / 1000} seconds` }),
        limits[call],
      );
      waiting.set(turn, (answer) => {
        timers.clear(timer);
        resolve(answer as Answer<T>);
      });
      try {
        post({ turn, call, with: given });
      } catch (error) {
        settle(turn, { ok: false, says: error instanceof Error ? error.message : String(error) });
      }
    });
  };

  return {
    ids: () => ask('ids'),
    look: (id) => ask('look', id),
    put: (copy) => ask('put', copy),
    append: (id, lines) => ask('append', id, lines),
    openLog: (id) => ask('openLog', id),
    release: () => ask('release'),
    remove: (id) => ask('remove', id),
    putPhoto: (sha256, bytes) => ask('putPhoto', sha256, bytes),
    photo: (sha256) => ask('photo', sha256),
    dropPhotos: (names) => ask('dropPhotos', names),
    close: () => {
      breaks('it is closed');
      port?.close();
      port = undefined;
    },
  };
}

/** Undefined where there are no workers or no private file system: an old browser, or a page without https. */
function browserWorker(): Port | undefined {
  if (typeof Worker === 'undefined' || typeof navigator.storage?.getDirectory !== 'function')
    return undefined;
  const worker = new Worker(new URL('copyWorker.ts', import.meta.url), { type: 'module' });
  return {
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- only windows have a target origin
    post: (asked) => worker.postMessage(asked),
    listen: (hear, broken) => {
      worker.addEventListener('message', (event: MessageEvent<Answered>) => hear(event.data));
      worker.addEventListener('error', (event) => broken(event.message || 'its program could not be loaded'));
    },
    close: () => worker.terminate(),
  };
}
