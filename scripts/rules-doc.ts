// Writes docs/rules: the rule book in words, one page per family, from the rules themselves.
//   npm run rules:doc             writes the pages
//   npm run rules:doc -- --check  writes nothing; ends with 1 when a page is not what the rules say
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { allRules } from '../src/domain/rules/all.ts';
import { argumentsOf } from './lib/arguments.mjs';
import { inRoot } from './lib/repo.mjs';
import { manualPages } from './lib/rules-pages.ts';

const call = argumentsOf({ usage: 'npm run rules:doc -- [--check]', flags: ['check'] });
const folder = inRoot('docs', 'rules');
const pages = manualPages(allRules);
mkdirSync(folder, { recursive: true });
const there = readdirSync(folder).filter((name) => name.endsWith('.md'));

const read = (name: string) => {
  try {
    return readFileSync(path.join(folder, name), 'utf8');
  } catch {
    return undefined;
  }
};
const stale = [
  ...[...pages].filter(([name, text]) => read(name) !== text).map(([name]) => name),
  ...there.filter((name) => !pages.has(name)),
];

if (call.has('check')) {
  if (stale.length > 0) {
    console.error(`docs/rules is not what the rules say: ${stale.join(', ')}. Run: npm run rules:doc`);
    process.exitCode = 1;
  } else console.log(`docs/rules says what the rules say (${pages.size} pages).`);
} else {
  for (const name of there) if (!pages.has(name)) rmSync(path.join(folder, name));
  for (const [name, text] of pages) writeFileSync(path.join(folder, name), text);
  console.log(stale.length === 0 ? 'docs/rules needed no change.' : `docs/rules: wrote ${stale.join(', ')}.`);
}
