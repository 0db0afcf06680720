// Serves the built app on this machine. The file server comes from the build tool; what it lets pass is settled here.
import { realpathSync } from 'node:fs';
import path from 'node:path';
import { headers } from './policy.mjs';
import { inRoot, root } from './repo.mjs';

const dist = inRoot('dist');

/**
 * What stands in front of the file server. A browser keeps separate data for each host and port, so there is one
 * address: by any other name of this machine the page would open empty.
 * @param {number} port
 * @returns {import('vite').Plugin}
 */
const guard = (port) => ({
  name: 'latchward-guard',
  configurePreviewServer(server) {
    server.middlewares.use((request, response, next) => {
      const refuse = (/** @type {number} */ code, /** @type {string} */ says) => {
        response.writeHead(code, { ...headers, 'Content-Type': 'text/plain; charset=utf-8' });
        response.end(says);
      };
      const [host] = (request.headers.host ?? '').split(':');
      if (host === 'localhost') {
        response.writeHead(308, { ...headers, Location: `http://127.0.0.1:${port}${request.url ?? '/'}` });
        response.end();
        return;
      }
      if (request.method !== 'GET' && request.method !== 'HEAD')
        return refuse(405, 'Only reading is allowed here.');
      const { range } = request.headers;
      if (range !== undefined && !isRange(range)) return refuse(416, 'This range cannot be read.');
      if (leavesTheFolder(request.url ?? '/')) return refuse(404, 'There is no such file.');
      next();
    });
  },
});

/** One range of bytes whose end does not come before its start. */
function isRange(/** @type {string} */ range) {
  const found = /^bytes=(\d*)-(\d*)$/.exec(range);
  if (!found || (found[1] === '' && found[2] === '')) return false;
  return found[1] === '' || found[2] === '' || Number(found[1]) <= Number(found[2]);
}

/** Whether a link in the folder leads out of it; a file that is not there leads nowhere. */
function leavesTheFolder(/** @type {string} */ url) {
  try {
    const file = path.join(dist, decodeURIComponent(new URL(url, 'http://127.0.0.1').pathname));
    const real = realpathSync(file);
    return real !== realpathSync(dist) && !real.startsWith(realpathSync(dist) + path.sep);
  } catch (error) {
    return error instanceof URIError;
  }
}

/**
 * @param {{ host: string, port: number, strictPort: boolean }} where
 */
export async function serve({ host, port, strictPort }) {
  const { preview } = await import('vite');
  return preview({
    root,
    logLevel: 'warn',
    // No start page in place of a file that is missing: a script that is not there must not answer 200.
    appType: 'mpa',
    plugins: [guard(port)],
    preview: { host, port, strictPort, open: false, headers, cors: false },
  });
}
