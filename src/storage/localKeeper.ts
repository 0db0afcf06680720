/**
 * localStorage: small and written at once, before a page can be closed. It may be full, blocked or wiped at any
 * time, so what is kept here is a setting, or the gap until a slower store has confirmed the same thing.
 */
export type LocalKeeper = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>;

/** Reading the property alone throws where a browser blocks storage. */
export function browserKeeper(): LocalKeeper | undefined {
  try {
    return globalThis.localStorage;
  } catch {
    return undefined;
  }
}

/** Texts under one prefix. Every call answers; `set` says whether the text is kept. */
export interface LocalBox {
  readonly get: (key: string) => string | undefined;
  readonly set: (key: string, text: string) => boolean;
  readonly drop: (key: string) => void;
  readonly keys: () => readonly string[];
}

export function localBox(prefix: string, keeper: LocalKeeper | undefined = browserKeeper()): LocalBox {
  const attempt = <T>(work: (keeper: LocalKeeper) => T, otherwise: T): T => {
    try {
      return keeper ? work(keeper) : otherwise;
    } catch {
      return otherwise;
    }
  };
  return {
    get: (key) => attempt((kept) => kept.getItem(prefix + key) ?? undefined, undefined),
    set: (key, text) =>
      attempt((kept) => {
        kept.setItem(prefix + key, text);
        return true;
      }, false),
    drop: (key) => attempt((kept) => kept.removeItem(prefix + key), undefined),
    keys: () =>
      attempt(
        (kept) =>
          Array.from({ length: kept.length }, (_, index) => kept.key(index) ?? '')
            .filter((key) => key.startsWith(prefix))
            .map((key) => key.slice(prefix.length)),
        [],
      ),
  };
}
