// Serves the built app on one given port, building it first when it is out of date. Used by the browser tests:
//   node scripts/serve-built.mjs 4317
import { ensureBuilt } from './lib/build.mjs';
import { main } from './lib/main.mjs';
import { root } from './lib/repo.mjs';

await main(async () => {
  const port = Number(process.argv[2]);
  if (!Number.isInteger(port))
    throw new Error('Say which port, for example: node scripts/serve-built.mjs 4317');
  await ensureBuilt();
  const { preview } = await import('vite');
  await preview({
    root,
    logLevel: 'warn',
    preview: { host: '127.0.0.1', port, strictPort: true, open: false },
  });
});
