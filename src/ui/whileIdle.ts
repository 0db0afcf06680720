/** So long at a time that no frame is late for it, where the browser does not say how long nobody waits. */
const sliceMs = 8;
/** What is left of a pause for the item that is begun last. */
const restMs = 2;

/** Does something with each item while the page is idle, a few ms at a time, until all are done or nobody wants it. */
export function whileIdle<T>(items: readonly T[], work: (item: T) => void): () => void {
  const hasIdle = typeof requestIdleCallback === 'function';
  let at = 0;
  let next: number;
  // Safari has no idle callbacks.
  const later = () => {
    next = hasIdle ? requestIdleCallback(slice) : window.setTimeout(() => slice(), 50);
  };
  const slice = (pause?: IdleDeadline) => {
    const end = performance.now() + (pause ? Math.max(restMs, pause.timeRemaining() - restMs) : sliceMs);
    for (; at < items.length && performance.now() < end; at++) {
      const item = items[at];
      if (item !== undefined) work(item);
    }
    if (at < items.length) later();
  };
  later();
  return () => (hasIdle ? cancelIdleCallback(next) : clearTimeout(next));
}
