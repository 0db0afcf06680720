import { createKeeper } from './keeper.ts';
import { opfsFiles } from './opfs.ts';
import { type Call, inTurns } from './turns.ts';

/** A call as it crosses to the worker, and the answer to it. */
export interface Asked {
  readonly turn: number;
  readonly call: Call;
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

const doInTurn = inTurns(createKeeper(opfsFiles(() => navigator.storage.getDirectory())));

scope.addEventListener('message', ({ data }) => void answer(data));

async function answer({ turn, call, with: given }: Asked): Promise<void> {
  try {
    const value = await doInTurn(call, given);
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- only windows have a target origin
    scope.postMessage({ turn, ok: true, value });
  } catch (error) {
    const says = error instanceof Error ? error.message || error.name : String(error);
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- only windows have a target origin
    scope.postMessage({ turn, ok: false, says });
  }
}
