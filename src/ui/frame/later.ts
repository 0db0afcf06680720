import { useEffect, useState } from 'react';

/** A part of a screen that comes after its first sight; asked for once, then at hand for good. */
export interface Later<T> {
  readonly load: () => Promise<T>;
  readonly now: () => T | undefined;
}

export function later<T>(fetchIt: () => Promise<T>): Later<T> {
  let here: T | undefined;
  return {
    load: async () => (here ??= await fetchIt()),
    now: () => here,
  };
}

/** Undefined until it is there. What cannot be fetched is thrown, for the panel around it to say. */
export function useLater<T>(part: Later<T>): T | undefined {
  const [failed, setFailed] = useState<{ readonly error: unknown }>();
  const [, seen] = useState(false);
  const now = part.now();
  const missing = now === undefined;
  useEffect(() => {
    if (!missing) return;
    let gone = false;
    part.load().then(
      () => !gone && seen(true),
      (error: unknown) => !gone && setFailed({ error }),
    );
    return () => {
      gone = true;
    };
  }, [part, missing]);
  if (failed) throw failed.error;
  return now;
}
