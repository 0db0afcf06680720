// npm start: installs, builds and serves the app on this machine only, and opens it in the browser.
import { spawn } from 'node:child_process';
import { networkInterfaces } from 'node:os';
import { argumentsOf } from './lib/arguments.mjs';
import { requireNode } from './lib/node-version.mjs';
import { ensureInstalled } from './lib/install.mjs';
import { ensureBuilt } from './lib/build.mjs';
import { main } from './lib/main.mjs';
import { serve } from './lib/serve.mjs';

const asked = argumentsOf({ usage: 'npm start [-- --host]', flags: ['host'] });
/** A port of its own: a browser keeps data by port, and a port that other tools use as well would share it. */
const usualPort = Number(process.env['LATCHWARD_PORT'] ?? 47290);

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

const addressesHere = () =>
  Object.values(networkInterfaces())
    .flatMap((list) => list ?? [])
    .filter(({ family, internal }) => family === 'IPv4' && !internal)
    .map(({ address }) => address);

await main(async () => {
  requireNode();
  await ensureInstalled();
  await ensureBuilt();

  const onNetwork = asked.has('host');
  const server = await serve({
    host: onNetwork ? '0.0.0.0' : '127.0.0.1',
    port: usualPort,
    strictPort: false,
  });
  const bound = server.httpServer.address();
  const port = typeof bound === 'object' && bound ? bound.port : usualPort;
  const address = `http://127.0.0.1:${port}/`;
  if (!address.includes(`:${usualPort}/`)) {
    console.warn(
      `Port ${usualPort} is taken. A browser keeps separate data for each port, so projects saved at port ` +
        `${usualPort} do not show up at the address below.`,
    );
  }
  console.log(`Latchward is running at ${address} (Ctrl+C stops it)`);
  if (onNetwork) {
    for (const one of addressesHere()) console.log(`On this network: http://${one}:${port}/`);
    console.log(
      'Without https a browser on another device cannot install the app, open it offline or keep a second copy. ' +
        'Use it to try the app; for work, put the folder dist on any https host (README, On a phone).',
    );
  }
  open(address);
});
