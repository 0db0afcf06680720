// Finds a Chromium for the browser tests.
//   node scripts/browser.mjs              prints its path, or fails when there is none
//   node scripts/browser.mjs --install    installs one when there is none
import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright';
import { tools } from './lib/repo.mjs';
import { argumentsOf } from './lib/arguments.mjs';

/** Smallest first: the headless shell starts in a third of the time of a full browser. */
const usualPlaces = /** @type {Partial<Record<NodeJS.Platform, string[]>>} */ ({
  linux: [
    '/usr/bin/chromium-headless-shell',
    '/usr/bin/chromium',
    '/usr/bin/chromium-browser',
    '/usr/bin/google-chrome-stable',
    '/usr/bin/google-chrome',
  ],
  darwin: [
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
  ],
  win32: [
    'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
    'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
    'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
  ],
});

/** Switches that keep a test browser quiet, and let it run as root and in a container. */
export const browserArgs = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** @returns {string | undefined} */
export function findBrowser() {
  const chosen = process.env['CHROMIUM_PATH'];
  if (chosen) {
    if (existsSync(chosen)) return chosen;
    throw new Error(`CHROMIUM_PATH names ${chosen}, and there is no such file.`);
  }
  return [chromium.executablePath(), ...(usualPlaces[process.platform] ?? [])].find((file) =>
    existsSync(file),
  );
}

/**
 * Our own output is the path of the browser, so an installer may only speak when something goes wrong.
 * @param {string} command
 * @param {string[]} args
 */
function install(command, args) {
  execFileSync(command, args, {
    stdio: ['ignore', 'ignore', 'pipe'],
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
  });
}

/** @returns {string} */
export function findOrInstallBrowser() {
  const found = findBrowser();
  if (found !== undefined) return found;

  if (existsSync('/usr/bin/apt-get') && process.getuid?.() === 0) {
    console.error('Installing chromium-headless-shell and fonts-liberation …');
    try {
      install('apt-get', ['update', '-qq']);
      // Without a font of known widths, printed pages break at other places than on our machines.
      const packages = ['chromium-headless-shell', 'fonts-liberation'];
      install('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...packages]);
    } catch {
      console.error('The system packages hold no Chromium; trying the download of Playwright.');
    }
    const installed = findBrowser();
    if (installed !== undefined) return installed;
  }

  console.error('Downloading Chromium …');
  try {
    install(process.execPath, [tools.playwright, 'install', 'chromium']);
  } catch {
    // The sentence below says what to do.
  }
  const downloaded = findBrowser();
  if (downloaded !== undefined) return downloaded;
  throw new Error(
    'The browser tests need Chromium or Chrome, and none could be found or installed. ' +
      'Install one, or set CHROMIUM_PATH to its program file.',
  );
}

const calledDirectly =
  process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href;
if (calledDirectly) {
  try {
    const call = argumentsOf({ usage: 'node scripts/browser.mjs [--install]', flags: ['install'] });
    const file = call.has('install') ? findOrInstallBrowser() : findBrowser();
    if (file === undefined) throw new Error('No browser found. Run: node scripts/browser.mjs --install');
    console.log(file);
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 1;
  }
}
