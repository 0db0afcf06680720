// Serves the built app on one given port, building it first when it is out of date. Used by the browser tests:
//   node scripts/serve-built.mjs 4317
import { argumentsOf, countOf } from './lib/arguments.mjs';
import { ensureBuilt } from './lib/build.mjs';
import { main } from './lib/main.mjs';
import { serve } from './lib/serve.mjs';

await main(async () => {
  const { words } = argumentsOf({ usage: 'node scripts/serve-built.mjs PORT', words: ['port'] });
  const port = countOf(words[0], 'The port', 4317);
  await ensureBuilt();
  await serve({ host: '127.0.0.1', port, strictPort: true });
});
