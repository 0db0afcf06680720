import wasm from 'web-ifc/web-ifc.wasm?url';
import { ifcEngine } from './engine.ts';
import { type ModelNews, readAndTell } from './tell.ts';

/** The part of a worker's scope that is used; the types of a page do not know it. */
const scope = globalThis as unknown as {
  readonly addEventListener: (type: 'message', hear: (event: MessageEvent<Uint8Array>) => void) => void;
  readonly postMessage: (news: ModelNews) => void;
};

scope.addEventListener('message', ({ data }) => {
  const engine = ifcEngine(new URL(wasm, globalThis.location.href).href);
  // oxlint-disable-next-line unicorn/require-post-message-target-origin -- only windows have a target origin
  void readAndTell(data, engine, (news) => scope.postMessage(news));
});
