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
 * Fetches pages while nobody waits, one after another: where the network is lost before a page was first opened, it is
 * there. A fetch that fails is tried again when the page is opened. Returns what calls it off.
 */
export function loadAll(pages: readonly LazyPage[]): () => void {
  const [first, ...others] = pages;
  if (!first) return () => undefined;
  let callOff = whenIdle(() => {
    const next = () => {
      callOff = loadAll(others);
    };
    void first.load().then(next, next);
  });
  return () => callOff();
}
