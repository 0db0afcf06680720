// Where things are. Every script works from the repository root, whatever folder it is called from.
import { fileURLToPath } from 'node:url';
import path from 'node:path';

export const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');

/** @param {string[]} parts */
export const inRoot = (...parts) => path.join(root, ...parts);

/** Reports of the test runners; inside node_modules so that they never show up as changed files. */
export const reportsDir = inRoot('node_modules', '.cache', 'latchward');

/**
 * Tools are started as `node <file>` instead of through node_modules/.bin, whose entries are shell scripts
 * on one system and .cmd files on another.
 */
export const tools = {
  vite: inRoot('node_modules/vite/bin/vite.js'),
  tsc: inRoot('node_modules/typescript/bin/tsc'),
  oxlint: inRoot('node_modules/oxlint/bin/oxlint'),
  biome: inRoot('node_modules/@biomejs/biome/bin/biome'),
  knip: inRoot('node_modules/knip/bin/knip.js'),
  vitest: inRoot('node_modules/vitest/vitest.mjs'),
  playwright: inRoot('node_modules/playwright/cli.js'),
};
