import { type ComponentType, lazy } from 'react';

type Load = () => Promise<{ default: ComponentType }>;
const loaders: Load[] = [];

/** A page in a file of its own, fetched when it is first shown or when nothing else is to do. */
export function lazyPage(load: Load) {
  loaders.push(load);
  return lazy(load);
}

/**
 * Fetches every page while nobody waits: where the network is lost before a page was first opened, it is there. A
 * fetch that fails is tried again when the page is opened. Returns what calls it off.
 */
export function loadAllPages(): () => void {
  const load = () => void Promise.allSettled(loaders.map((one) => one()));
  if (!('requestIdleCallback' in globalThis)) {
    const timer = setTimeout(load, 2000);
    return () => clearTimeout(timer);
  }
  const waiting = requestIdleCallback(load, { timeout: 5000 });
  return () => cancelIdleCallback(waiting);
}
