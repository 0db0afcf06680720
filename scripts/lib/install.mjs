// Installs the packages when they are missing or do not match package-lock.json.
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { inRoot } from './repo.mjs';
import { run, runNode } from './run.mjs';

const lockFile = inRoot('package-lock.json');
const stampFile = inRoot('node_modules', '.latchward-lock');

/** @param {string} file @returns {Record<string, { version?: string, optional?: boolean }>} */
const packagesIn = (file) => JSON.parse(readFileSync(file, 'utf8')).packages ?? {};

/**
 * npm keeps its own list of what it installed. Somebody who ran `npm ci` by hand has no stamp of ours, and
 * must not wait for a second installation.
 */
function installedByHand() {
  const listFile = inRoot('node_modules', '.package-lock.json');
  if (!existsSync(listFile)) return false;
  const wanted = packagesIn(lockFile);
  const installed = packagesIn(listFile);
  return (
    Object.entries(wanted).every(
      ([name, { version, optional }]) =>
        name === '' || (name in installed ? installed[name]?.version === version : optional === true),
    ) && Object.keys(installed).every((name) => name in wanted)
  );
}

function npmCi() {
  // Under `npm start` and `npm test` npm tells where it is; that avoids the .cmd file on Windows.
  const npm = process.env['npm_execpath'];
  if (npm?.endsWith('npm-cli.js')) return runNode([npm, 'ci']);
  return run('npm', ['ci'], { shell: process.platform === 'win32' });
}

/** @returns {Promise<boolean>} true when an installation was needed */
export async function ensureInstalled() {
  const hash = createHash('sha256').update(readFileSync(lockFile)).digest('hex');
  if (existsSync(stampFile) && readFileSync(stampFile, 'utf8') === hash) return false;

  const needed = !installedByHand();
  if (needed) {
    console.log('Installing packages (only needed after a change of package-lock.json) …');
    const { code } = await npmCi();
    if (code !== 0) {
      throw new Error('The packages could not be installed. Check the connection and the messages above.');
    }
  }
  writeFileSync(stampFile, hash);
  return needed;
}
