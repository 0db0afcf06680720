import type { Clock, NewId } from '../clock.ts';

/** A minute passes with every reading. */
export function steppingClock(start = '2026-01-05T08:00:00.000Z'): Clock {
  let now = Date.parse(start);
  return () => {
    const reading = new Date(now).toISOString();
    now += 60_000;
    return reading;
  };
}

/** `id-1`, `id-2`, … */
export function countingIds(prefix = 'id'): NewId {
  let count = 0;
  return () => {
    count += 1;
    return `${prefix}-${count}`;
  };
}
