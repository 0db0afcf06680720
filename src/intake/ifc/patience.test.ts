import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { listenFor, patienceMs } from './patience.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

test('a reader that falls silent is given up once, sooner after its first word', () => {
  const gaveUp = vi.fn<() => void>();
  const listening = listenFor(2_000_000, gaveUp);
  vi.advanceTimersByTime(patienceMs(2_000_000, false) - 1);
  listening.heard();
  vi.advanceTimersByTime(patienceMs(2_000_000, true) - 1);
  expect(gaveUp).not.toHaveBeenCalled();
  vi.advanceTimersByTime(120_000);
  expect(gaveUp).toHaveBeenCalledTimes(1);
});

test('a reader that speaks, or has ended, is not given up', () => {
  const gaveUp = vi.fn<() => void>();
  const listening = listenFor(1_000, gaveUp);
  for (let word = 0; word < 100; word += 1) {
    listening.heard();
    vi.advanceTimersByTime(4_000);
  }
  listening.done();
  vi.advanceTimersByTime(1e6);
  expect(gaveUp).not.toHaveBeenCalled();
});
