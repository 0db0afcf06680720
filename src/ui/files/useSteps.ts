import { useCallback, useEffect, useRef, useState } from 'react';

export interface Progress {
  readonly done: number;
  readonly total: number;
}

/** Time of one slice: short enough that the page answers between two of them. */
const sliceMs = 12;
const breath = () => new Promise<void>((resolve) => setTimeout(resolve));

/**
 * Long work piece by piece, with its progress, and a way to stop it between two pieces. Leaving the page stops it
 * as well.
 */
export function useSteps() {
  const [progress, setProgress] = useState<Progress | null>(null);
  const running = useRef<{ stopped: boolean } | null>(null);
  const stop = useCallback(() => {
    if (running.current) running.current.stopped = true;
    running.current = null;
    setProgress(null);
  }, []);
  useEffect(
    () => () => {
      if (running.current) running.current.stopped = true;
    },
    [],
  );
  const run = useCallback(async <T>(items: readonly T[], each: (item: T) => void): Promise<boolean> => {
    if (running.current) running.current.stopped = true;
    const mine = { stopped: false };
    running.current = mine;
    setProgress({ done: 0, total: items.length });
    await breath();
    let until = performance.now() + sliceMs;
    for (const [index, item] of items.entries()) {
      each(item);
      if (performance.now() < until) continue;
      setProgress({ done: index + 1, total: items.length });
      // Each slice waits for the page to have answered.
      // oxlint-disable-next-line no-await-in-loop
      await breath();
      if (mine.stopped) return false;
      until = performance.now() + sliceMs;
    }
    if (mine.stopped) return false;
    running.current = null;
    setProgress(null);
    return true;
  }, []);
  return { progress, run, stop };
}
