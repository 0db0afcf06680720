import { expect, test } from 'vitest';
import { countsByLicense, packagesOf, toBeRead } from './licenses.ts';

const lock = {
  packages: {
    '': { version: '0.1.0' },
    'node_modules/a': { version: '1.0.0', license: 'MIT' },
    'node_modules/@x/b': { version: '2.0.0', license: '(MPL-2.0 OR Apache-2.0)' },
    'node_modules/a/node_modules/c': { version: '3.0.0', license: 'GPL-3.0-only' },
    'node_modules/d': { version: '4.0.0' },
    'node_modules/e': { version: '5.0.0', license: 'GPL-3.0-only', dev: true },
  },
};

test('every package of the lock is listed by its own name, with its license', () => {
  expect(packagesOf(lock).map(({ name, version }) => `${name} ${version}`)).toEqual([
    '@x/b 2.0.0',
    'a 1.0.0',
    'c 3.0.0',
    'd 4.0.0',
    'e 5.0.0',
  ]);
});

test('a license that nobody allowed, or none at all, is named where it is shipped, and only there', () => {
  expect(toBeRead(packagesOf(lock)).map(({ name }) => name)).toEqual(['c', 'd']);
});

test('licenses are counted', () => {
  expect(countsByLicense(packagesOf(lock))[0]).toEqual(['GPL-3.0-only', 2]);
});
