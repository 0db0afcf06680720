import type { ReadModel } from '../../domain/import/buildingModel.ts';

/**
 * How long the reader of building models may say nothing before it is given up, in milliseconds. Torn records can keep
 * the library in a circle without end. The first word comes when its program is loaded; opening a model takes well under
 * a second a megabyte on a phone.
 */
export function patienceMs(bytes: number, hasBegun: boolean): number {
  return hasBegun ? 5_000 + bytes / 1_000 : 60_000;
}

export const noAnswer: ReadModel = {
  ok: false,
  says: 'Reading the model came to no end and was given up; the file is damaged. Nothing was taken.',
};

/** Calls back once when nothing was heard for as long as patience lasts. */
export function listenFor(bytes: number, onSilence: () => void, scale = 1) {
  let timer = setTimeout(onSilence, patienceMs(bytes, false));
  return {
    heard: () => {
      clearTimeout(timer);
      timer = setTimeout(onSilence, patienceMs(bytes, true) * scale);
    },
    done: () => clearTimeout(timer),
  };
}
