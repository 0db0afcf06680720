// npm start: installs, builds and serves the app on this machine only, and opens it in the browser.
import { spawn } from 'node:child_process';
import { argumentsOf } from './lib/arguments.mjs';
import { requireNode } from './lib/node-version.mjs';
import { ensureInstalled } from './lib/install.mjs';
import { ensureBuilt } from './lib/build.mjs';
import { main } from './lib/main.mjs';
import { root } from './lib/repo.mjs';

argumentsOf({ usage: 'npm start' });
const usualPort = 4173;

/** @returns {[string, string[]] | undefined} the command that opens an address in the usual browser */
function opener(/** @type {string} */ address) {
  if (process.env['CI'] || process.env['LATCHWARD_NO_OPEN']) return undefined;
  if (process.platform === 'darwin') return ['open', [address]];
  // The empty argument is the window title that `start` expects before an address.
  if (process.platform === 'win32') return ['cmd', ['/c', 'start', '""', address]];
  const hasDisplay = process.env['DISPLAY'] || process.env['WAYLAND_DISPLAY'];
  return hasDisplay ? ['xdg-open', [address]] : undefined;
}

function open(/** @type {string} */ address) {
  const command = opener(address);
  if (command === undefined) return;
  const child = spawn(command[0], command[1], {
    stdio: 'ignore',
    detached: true,
    windowsVerbatimArguments: process.platform === 'win32',
  });
  child.on('error', () => {
    // No opener on this machine: the address is printed anyway.
  });
  child.unref();
}

await main(async () => {
  requireNode();
  await ensureInstalled();
  await ensureBuilt();

  const { preview } = await import('vite');
  const server = await preview({
    root,
    logLevel: 'warn',
    preview: { host: '127.0.0.1', port: usualPort, strictPort: false, open: false },
  });
  const address = server.resolvedUrls?.local[0] ?? `http://127.0.0.1:${usualPort}/`;
  if (!address.includes(`:${usualPort}/`)) {
    console.warn(
      `Port ${usualPort} is taken. A browser keeps separate data for each port, so projects saved at port ` +
        `${usualPort} do not show up at the address below.`,
    );
  }
  console.log(`Latchward is running at ${address} (Ctrl+C stops it)`);
  open(address);
});
