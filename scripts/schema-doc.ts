// Writes docs/spec/decisions.schema.json: the schema of the decisions that go out to other programs.
//   npm run schema:doc
import { writeFileSync } from 'node:fs';
import { argumentsOf } from './lib/arguments.mjs';
import { inRoot } from './lib/repo.mjs';
import { decisionsSchemaText } from './lib/schema-document.ts';

argumentsOf({ usage: 'npm run schema:doc', flags: [] });
writeFileSync(inRoot('docs', 'spec', 'decisions.schema.json'), decisionsSchemaText());
console.log('docs/spec/decisions.schema.json is written.');
