import { defineConfig } from 'vitest/config';

/** Checks against lists kept outside this repository; run by `npm run outside`, and failing where they are missing. */
export default defineConfig({ test: { include: ['tests/outside/**/*.test.ts'], testTimeout: 20_000 } });
