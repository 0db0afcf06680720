import { type ComponentType, lazy } from 'react';
import { whenIdle } from './whenIdle.ts';

type Load = () => Promise<{ default: ComponentType }>;

/** A page in a file of its own, fetched when it is first shown or when nothing else is to do. */
export interface LazyPage {
  readonly Page: ComponentType;
  readonly load: Load;
}

export function lazyPage(load: Load): LazyPage {
  return { Page: lazy(load), load };
}

/**
 * Fetches what comes later while nobody waits, one after another: where the network is lost before it was first needed,
 * it is there. A fetch that fails is tried again when it is needed. Returns what calls it off.
 */
export function loadAll(loads: readonly (() => Promise<unknown>)[]): () => void {
  const [first, ...others] = loads;
  if (!first) return () => undefined;
  let callOff = whenIdle(() => {
    const next = () => {
      callOff = loadAll(others);
    };
    void first().then(next, next);
  });
  return () => callOff();
}
