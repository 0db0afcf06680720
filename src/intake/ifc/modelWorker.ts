import wasm from 'web-ifc/web-ifc.wasm?url';
import type { ReadModel } from '../../domain/import/buildingModel.ts';
import { ifcEngine } from './engine.ts';
import { readIfc } from './readIfc.ts';

/** What the worker tells while it reads, and at its end. */
export type ModelNews =
  | { readonly is: 'step'; readonly done: number; readonly total: number }
  | { readonly is: 'end'; readonly read: ReadModel };

/** The part of a worker's scope that is used; the types of a page do not know it. */
const scope = globalThis as unknown as {
  readonly addEventListener: (type: 'message', hear: (event: MessageEvent<Uint8Array>) => void) => void;
  readonly postMessage: (news: ModelNews) => void;
};
const tell = (news: ModelNews) => {
  // oxlint-disable-next-line unicorn/require-post-message-target-origin -- only windows have a target origin
  scope.postMessage(news);
};

scope.addEventListener('message', ({ data }) => {
  void read(data);
});

async function read(bytes: Uint8Array): Promise<void> {
  let told = 0;
  try {
    const answer = await readIfc(
      bytes,
      ifcEngine(new URL(wasm, globalThis.location.href).href),
      (done, total) => {
        const now = performance.now();
        if (now - told < 100) return;
        told = now;
        tell({ is: 'step', done, total });
      },
    );
    tell({ is: 'end', read: answer });
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    tell({ is: 'end', read: { ok: false, says: `The reader of building models could not start (${why}).` } });
  }
}
