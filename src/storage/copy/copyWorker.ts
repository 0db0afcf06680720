import { createKeeper, type Keeper } from './keeper.ts';
import { opfsFiles } from './opfs.ts';

/** One call of the keeper as it crosses to the worker, and the answer to it. */
export interface Asked {
  readonly turn: number;
  readonly call: keyof Keeper;
  readonly with: readonly unknown[];
}
export type Answered =
  | { readonly turn: number; readonly ok: true; readonly value: unknown }
  | { readonly turn: number; readonly ok: false; readonly says: string };

/** The part of a worker's scope that is used; the types of a page do not know it. */
const scope = globalThis as unknown as {
  readonly addEventListener: (type: 'message', hear: (event: MessageEvent<Asked>) => void) => void;
  readonly postMessage: (answer: Answered) => void;
};

const keeper = createKeeper(opfsFiles(() => navigator.storage.getDirectory()));

/** One after the other: an edit may not overtake the copy it follows. */
let before: Promise<unknown> = Promise.resolve();
scope.addEventListener('message', ({ data }) => {
  before = before.then(() => answer(data));
});

async function answer({ turn, call, with: given }: Asked): Promise<void> {
  try {
    const value = await (keeper[call] as (...given: readonly unknown[]) => Promise<unknown>)(...given);
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- only windows have a target origin
    scope.postMessage({ turn, ok: true, value });
  } catch (error) {
    const says = error instanceof Error ? error.message || error.name : String(error);
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- only windows have a target origin
    scope.postMessage({ turn, ok: false, says });
  }
}
