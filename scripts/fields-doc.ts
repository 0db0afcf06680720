import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { argumentsOf } from './lib/arguments.mjs';
import { fieldsDocument } from './lib/fields-document.ts';

argumentsOf({ usage: 'npx tsx scripts/fields-doc.ts' });
/** Writes docs/spec/fields.md from the table of fields: `npx tsx scripts/fields-doc.ts`. */
writeFileSync(fileURLToPath(new URL('../docs/spec/fields.md', import.meta.url)), fieldsDocument());
