// Prepares every test of the "ui" project: matchers that speak about elements, an IndexedDB in memory
// (jsdom has none), and an empty page after each test.
import '@testing-library/jest-dom/vitest';
import 'fake-indexeddb/auto';
import { cleanup } from '@testing-library/react';
import { afterEach } from 'vitest';

afterEach(() => {
  cleanup();
});
