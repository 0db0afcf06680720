/**
 * Lists the packages of the lock with their licenses, those that reach the page first. Ends with 1 where a shipped one
 * has a license that nobody has read yet. `npm run licenses`, `npm run licenses -- --all` with the tools too.
 */
import { readFile } from 'node:fs/promises';
import { argumentsOf } from './lib/arguments.mjs';
import { countsByLicense, packagesOf, toBeRead } from './lib/licenses.ts';
import { inRoot } from './lib/repo.mjs';

const { has } = argumentsOf({ usage: 'npm run licenses -- [--all]', flags: ['all'] });
const packages = packagesOf(JSON.parse(await readFile(inRoot('package-lock.json'), 'utf8')));
const shipped = packages.filter((one) => one.isShipped);
for (const { name, version, license } of has('all') ? packages : shipped) {
  console.log(`${name} ${version}: ${license || 'no license named'}`);
}
const inWords = (list: typeof packages) =>
  countsByLicense(list)
    .map(([license, count]) => `${license || 'none named'} ${count}`)
    .join(', ');
console.log(`\nshipped: ${shipped.length} packages (${inWords(shipped)})`);
console.log(`all: ${packages.length} packages (${inWords(packages)})`);
const open = toBeRead(packages);
if (open.length > 0) {
  console.log(
    `to be read before shipping: ${open.map(({ name, license }) => `${name} (${license || 'none'})`).join(', ')}`,
  );
  process.exitCode = 1;
}
