// Builds the app when dist/ is missing or older than what it is made from.
import { existsSync, readdirSync, statSync } from 'node:fs';
import path from 'node:path';
import { inRoot, tools } from './repo.mjs';
import { runNode } from './run.mjs';

const sources = [
  'src',
  'public',
  'demo-data',
  'index.html',
  'vite.config.ts',
  'tsconfig.json',
  'package-lock.json',
];

/**
 * Folders count too: removing a file changes only the time of its folder.
 * @param {string} place
 * @returns {number}
 */
function newest(place) {
  if (!existsSync(place)) return 0;
  const stat = statSync(place);
  if (!stat.isDirectory()) return stat.mtimeMs;
  return readdirSync(place).reduce(
    (latest, name) => Math.max(latest, newest(path.join(place, name))),
    stat.mtimeMs,
  );
}

function isBuilt() {
  const page = inRoot('dist', 'index.html');
  if (!existsSync(page)) return false;
  const built = statSync(page).mtimeMs;
  return sources.every((source) => newest(inRoot(source)) <= built);
}

export const build = (/** @type {{ quiet?: boolean }} */ options = {}) =>
  runNode([tools.vite, 'build'], options);

export async function ensureBuilt() {
  if (isBuilt()) return;
  const { code } = await build();
  if (code !== 0) throw new Error('The app could not be built. The messages above say why.');
}
