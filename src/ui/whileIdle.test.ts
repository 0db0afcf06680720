import { expect, test, vi } from 'vitest';
import { whileIdle } from './whileIdle.ts';

test('every item has its turn once, and none any more once it is stopped', () => {
  vi.useFakeTimers();
  const done: number[] = [];
  whileIdle([1, 2, 3], (item) => done.push(item));
  expect(done).toEqual([]);
  vi.runAllTimers();
  expect(done).toEqual([1, 2, 3]);
  const stop = whileIdle([4, 5], (item) => done.push(item));
  stop();
  vi.runAllTimers();
  expect(done).toEqual([1, 2, 3]);
  vi.useRealTimers();
});
