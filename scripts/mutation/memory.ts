const [NativeMap, NativeWeakMap] = [Map, WeakMap];
let phase: 'before' | 'loading' | 'running' = 'before';
const restores = new NativeMap<object, () => void>();

/** A map that goes back to what it held when the code was loaded. Those made later live and die with their test. */
class RestoredMap<K, V> extends NativeMap<K, V> {
  constructor(entries?: Iterable<readonly [K, V]> | null) {
    super();
    if (phase === 'loading') madeAtLoad.add(this);
    for (const [key, value] of entries ?? []) this.set(key, value);
  }
  override set(key: K, value: V): this {
    this.#note();
    return super.set(key, value);
  }
  override delete(key: K): boolean {
    this.#note();
    return super.delete(key);
  }
  override clear(): void {
    this.#note();
    super.clear();
  }
  #note(): void {
    if (phase !== 'running' || restores.has(this) || !madeAtLoad.has(this)) return;
    const held = [...this];
    restores.set(this, () => {
      super.clear();
      for (const [key, value] of held) super.set(key, value);
    });
  }
}
const madeAtLoad = new WeakSet<object>();

class RestoredWeakMap<K extends WeakKey, V> extends NativeWeakMap<K, V> {
  readonly #isWatched = phase === 'loading';
  #later = new NativeWeakMap<K, { readonly value: V } | null>();
  override get(key: K): V | undefined {
    const later = this.#later.get(key);
    return later === undefined ? super.get(key) : later?.value;
  }
  override has(key: K): boolean {
    const later = this.#later.get(key);
    return later === undefined ? super.has(key) : later !== null;
  }
  override set(key: K, value: V): this {
    if (phase !== 'running' || !this.#isWatched) return super.set(key, value);
    this.#put(key, { value });
    return this;
  }
  override delete(key: K): boolean {
    const had = this.has(key);
    if (phase !== 'running' || !this.#isWatched) return super.delete(key);
    if (had) this.#put(key, null);
    return had;
  }
  #put(key: K, held: { readonly value: V } | null): void {
    this.#later.set(key, held);
    if (!restores.has(this)) {
      restores.set(this, () => {
        this.#later = new NativeWeakMap();
      });
    }
  }
}

/**
 * Code remembers answers in maps of its modules; an answer from before a slip would hide it, one from under a slip
 * would speak against the next. From now on such maps can be put back.
 */
export function watchMemory(): void {
  Object.assign(globalThis, { Map: RestoredMap, WeakMap: RestoredWeakMap });
}

export function codeLoads(): void {
  phase = 'loading';
}

export function codeIsLoaded(): void {
  phase = 'running';
}

export function restoreMemory(): void {
  for (const restore of restores.values()) restore();
  restores.clear();
}
