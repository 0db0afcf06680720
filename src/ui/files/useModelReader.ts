import { useCallback, useEffect, useRef, useState } from 'react';
import type { ModelReader } from '../../intake/ifc/isModel.ts';
import { type ModelReading, readInWorker } from '../../intake/ifc/readInWorker.ts';
import type { Progress } from './useSteps.ts';

/** Reads a building model beside the page, with its progress; leaving the page stops it. */
export function useModelReader() {
  const [progress, setProgress] = useState<Progress | null>(null);
  const reading = useRef<ModelReading | null>(null);
  const stop = useCallback(() => reading.current?.stop(), []);
  useEffect(() => stop, [stop]);
  const read: ModelReader = useCallback(async (bytes) => {
    reading.current?.stop();
    setProgress({ done: 0, total: 0 });
    const mine = readInWorker(bytes, (done, total) => setProgress({ done, total }));
    reading.current = mine;
    const answer = await mine.read;
    if (reading.current === mine) {
      reading.current = null;
      setProgress(null);
    }
    return answer;
  }, []);
  return { progress, read, stop };
}
