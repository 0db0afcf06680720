// Runs before everything else. The policy of the page forbids code made from text; the schema library would try it once
// and be reported, unless it is told beforehand.
globalThis.__zod_globalConfig = { jitless: true };
