import { type ChildProcess, fork } from 'node:child_process';
import process from 'node:process';
import { fileURLToPath } from 'node:url';
import type { ReadModel } from '../domain/import/buildingModel.ts';
import { ifcEngine } from '../intake/ifc/engine.ts';
import { listenFor, noAnswer } from '../intake/ifc/patience.ts';
import { type ModelNews, readAndTell } from '../intake/ifc/tell.ts';

export interface ModelProcess {
  /** One model after the other; one that comes to no end is refused, and the next one gets a fresh process. */
  readonly read: (bytes: Uint8Array) => Promise<ReadModel>;
  readonly end: () => void;
}

const asReader = '--read-models';
/** Whether this process was started by `modelProcess`; then it does nothing else. */
export const isModelReader = process.argv.includes(asReader) && process.send !== undefined;

/** Reads building models beside the program, so that it can give up on one. `scale` shortens the patience. */
export function modelProcess(scale = 1): ModelProcess {
  let child: ChildProcess | undefined;
  const end = () => {
    child?.removeAllListeners();
    child?.kill('SIGKILL');
    child = undefined;
  };
  const read = (bytes: Uint8Array) =>
    new Promise<ReadModel>((resolve) => {
      // This file is the reader as well: put together into one program, it is the only one there is.
      child ??= fork(fileURLToPath(import.meta.url), [asReader], { serialization: 'advanced' });
      const giveUp = (answer: ReadModel) => {
        silence.done();
        end();
        resolve(answer);
      };
      const silence = listenFor(bytes.length, () => giveUp(noAnswer), scale);
      child.removeAllListeners();
      child.on('exit', (code) =>
        giveUp({ ok: false, says: `The model cannot be read (its reader ended with ${code}).` }),
      );
      child.on('message', (news: ModelNews) => {
        silence.heard();
        if (news.is === 'step') return;
        silence.done();
        resolve(news.read);
      });
      child.send(bytes);
    });
  return { read, end };
}

if (isModelReader) {
  const engine = ifcEngine();
  process.on('message', (bytes: Uint8Array) => {
    void readAndTell(bytes, engine, (news) => process.send?.(news));
  });
}
