import { useEffect, useState } from 'react';
import type { Told } from '../../app/session/kit.ts';

/** Asks the storage when shown and when `key` changes; an answer that comes too late is dropped. */
export function useTold<T>(ask: () => Promise<Told<T>>, key: string): Told<T> | undefined {
  const [told, setTold] = useState<Told<T>>();
  useEffect(() => {
    let current = true;
    void ask().then((answer) => {
      if (current) setTold(answer);
    });
    return () => {
      current = false;
    };
    // `ask` is a method of the application and never changes; `key` says what it would answer about.
    // oxlint-disable-next-line react/exhaustive-deps
  }, [key]);
  return told;
}
