/** Does it when the page has nothing else to do, or after 5 s at the latest. Returns what calls it off. */
export function whenIdle(work: () => void): () => void {
  if (!('requestIdleCallback' in globalThis)) {
    const timer = setTimeout(work, 2000);
    return () => clearTimeout(timer);
  }
  const waiting = requestIdleCallback(work, { timeout: 5000 });
  return () => cancelIdleCallback(waiting);
}
