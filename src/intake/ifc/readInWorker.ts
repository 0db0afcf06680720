import type { ReadModel } from '../../domain/import/buildingModel.ts';
import { listenFor, noAnswer } from './patience.ts';
import type { ModelNews } from './tell.ts';

export interface ModelReading {
  readonly read: Promise<ReadModel>;
  /** Ends the work at once, wherever it is; the answer is then that it was stopped. */
  readonly stop: () => void;
}

const stopped: ReadModel = { ok: false, says: 'Reading was stopped. Nothing was taken.' };

/** A building model beside the page, which stays alive meanwhile. The bytes go over to the worker; nothing of them is left here. */
export function readInWorker(bytes: Uint8Array, step: (done: number, total: number) => void): ModelReading {
  const worker = new Worker(new URL('modelWorker.ts', import.meta.url), { type: 'module' });
  let end: (read: ReadModel) => void = () => undefined;
  const silence = listenFor(bytes.length, () => end(noAnswer));
  const read = new Promise<ReadModel>((resolve) => {
    end = (answer) => {
      silence.done();
      worker.terminate();
      resolve(answer);
    };
    worker.addEventListener('message', ({ data }: MessageEvent<ModelNews>) => {
      silence.heard();
      if (data.is === 'step') step(data.done, data.total);
      else end(data.read);
    });
    worker.addEventListener('error', ({ message }) => {
      end({
        ok: false,
        says: `The model cannot be read (${message === '' ? 'the reader ended' : message}).`,
      });
    });
  });
  // Copying sixty megabytes would hold the page up.
  worker.postMessage(bytes, bytes.buffer instanceof ArrayBuffer ? [bytes.buffer] : []);
  return { read, stop: () => end(stopped) };
}
