// Prepares every test of the "ui" project: matchers that speak about elements and an IndexedDB in memory (jsdom has
// none). All files share one page, so each test leaves it empty: no elements, nothing remembered, no address.
import '@testing-library/jest-dom/vitest';
import 'fake-indexeddb/auto';
import { cleanup } from '@testing-library/react';
import { afterEach, beforeEach, type MockInstance, vi } from 'vitest';

/** What React complains of, two rows of one key say, is a fault on the screen; in the log nobody would see it. */
let complaints: MockInstance<typeof console.error>;
beforeEach(() => {
  complaints = vi.spyOn(console, 'error');
});
afterEach(() => {
  cleanup();
  localStorage.clear();
  sessionStorage.clear();
  history.replaceState(null, '', '/');
  const said = complaints.mock.calls.map(([first, ...rest]) => [first, ...rest].join(' '));
  complaints.mockRestore();
  if (said.length > 0) throw new Error(said.join('\n'));
});
