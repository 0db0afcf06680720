import { describe, expect, test } from 'vitest';
import { createTabGuard, type TabGuard, type TabGuardNeeds } from './tabGuard.ts';
import { fakeChannels, fakeLocks, handTimers } from './testing/fakes.ts';

/** P10, for both ways of agreeing on one writer. */
function browser(withLocks: boolean) {
  const clock = handTimers();
  const locks = withLocks ? fakeLocks() : undefined;
  const channels = fakeChannels();
  const heard: [string, number][] = [];
  const window = (tabId: string, over: Partial<TabGuardNeeds> = {}): TabGuard =>
    createTabGuard({
      projectId: 'p',
      tabId,
      locks,
      channel: channels(over.projectId ?? 'p'),
      timers: clock.timers,
      onRole: () => undefined,
      onSaved: (revision) => heard.push([tabId, revision]),
      ...over,
    });
  return { ...clock, window, heard };
}

describe.each([
  ['with locks', true],
  ['by talking', false],
])('one writer per project, %s', (_how, withLocks) => {
  test('the first window writes, the second only reads', async () => {
    const { window, pass } = browser(withLocks);
    const first = window('z');
    await pass(1_000);
    const second = window('a');
    await pass(10_000);
    expect([first.role(), second.role()]).toEqual(['writer', 'reader']);
  });

  test('of windows opened at the same moment exactly one writes', async () => {
    const { window, pass } = browser(withLocks);
    const all = ['b', 'a', 'c'].map((id) => window(id));
    await pass(10_000);
    expect(all.map((guard) => guard.role()).toSorted()).toEqual(['reader', 'reader', 'writer']);
  });

  test('the second takes over when the first closes', async () => {
    const { window, pass } = browser(withLocks);
    const first = window('a');
    await pass(1_000);
    const second = window('b');
    await pass(1_000);
    await first.release();
    await pass(100);
    expect(second.role()).toBe('writer');
  });

  test('of two waiting windows only one takes over', async () => {
    const { window, pass } = browser(withLocks);
    const first = window('a');
    await pass(1_000);
    const rest = ['b', 'c'].map((id) => window(id));
    await pass(1_000);
    await first.release();
    await pass(10_000);
    expect(rest.map((guard) => guard.role()).toSorted()).toEqual(['reader', 'writer']);
  });

  test('a window that closes while it waits is not handed the project', async () => {
    const { window, pass } = browser(withLocks);
    const first = window('a');
    await pass(1_000);
    const second = window('b');
    const third = window('c');
    await pass(1_000);
    await second.release();
    await first.release();
    await pass(10_000);
    expect(second.role()).toBe('reader');
    expect(third.role()).toBe('writer');
  });

  test('readers hear of each save, the writer does not hear itself', async () => {
    const { window, pass, heard } = browser(withLocks);
    const first = window('a');
    await pass(1_000);
    window('b');
    await pass(1_000);
    first.tellSaved(7);
    await pass(1);
    expect(heard).toEqual([['b', 7]]);
  });

  test('another project is another matter', async () => {
    const { window, pass } = browser(withLocks);
    const first = window('a');
    const second = window('b', { projectId: 'q' });
    await pass(1_000);
    expect([first.role(), second.role()]).toEqual(['writer', 'writer']);
  });

  test('the same window can have the project again right after letting go', async () => {
    const { window, pass } = browser(withLocks);
    const first = window('a');
    await pass(1_000);
    await first.release();
    const again = window('a');
    await pass(1_000);
    expect(again.role()).toBe('writer');
  });
});

test('by talking: a window that crashed without a good-bye is replaced', async () => {
  const clock = handTimers();
  const channels = fakeChannels();
  const crashing = channels('p');
  const make = (tabId: string, channel = channels('p')) =>
    createTabGuard({
      projectId: 'p',
      tabId,
      channel,
      timers: clock.timers,
      onRole: () => undefined,
      onSaved: () => undefined,
    });
  make('a', crashing);
  await clock.pass(1_000);
  const second = make('b');
  await clock.pass(10_000);
  expect(second.role()).toBe('reader');
  crashing.close();
  await clock.pass(10_000);
  expect(second.role()).toBe('writer');
});

test('where locks are refused and nothing can be heard, the window writes: it must not wait for ever', async () => {
  const clock = handTimers();
  const guard = createTabGuard({
    projectId: 'p',
    tabId: 'a',
    locks: { request: () => Promise.reject(new DOMException('no', 'SecurityError')) },
    timers: clock.timers,
    onRole: () => undefined,
    onSaved: () => undefined,
  });
  await clock.settle();
  expect(guard.role()).toBe('writer');
});
