import { useCallback, useEffect, useState } from 'react';
import type { Told } from '../../app/session.ts';

type Asked<T> = { readonly state: 'waiting' } | { readonly state: 'told'; readonly told: Told<T> };

/** Asks the storage when shown, when `key` changes and on demand; an answer that comes too late is dropped. */
export function useTold<T>(
  ask: () => Promise<Told<T>>,
  key: string,
): readonly [told: Told<T> | undefined, again: () => void] {
  const [asked, setAsked] = useState<Asked<T>>({ state: 'waiting' });
  const [times, setTimes] = useState(0);
  useEffect(() => {
    let current = true;
    void ask().then((told) => {
      if (current) setAsked({ state: 'told', told });
    });
    return () => {
      current = false;
    };
    // `ask` is a method of the application and never changes; `key` says what it would answer about.
    // oxlint-disable-next-line react/exhaustive-deps
  }, [key, times]);
  const again = useCallback(() => setTimes((before) => before + 1), []);
  return [asked.state === 'told' ? asked.told : undefined, again];
}
