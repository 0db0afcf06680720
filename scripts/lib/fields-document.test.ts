import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { fieldsDocument } from './fields-document.ts';

it('docs/spec/fields.md is what the table of fields says', () => {
  const written = readFileSync(new URL('../../docs/spec/fields.md', import.meta.url), 'utf8');
  expect(
    written === fieldsDocument(),
    'Run `npx tsx scripts/fields-doc.ts` and commit docs/spec/fields.md.',
  ).toBe(true);
});
