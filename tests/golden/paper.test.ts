import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { demoProject } from '../../scripts/demo/demoProject.ts';
import { fewOf, paperPartNames, paperParts, partOfPaper } from '../../scripts/demo/goldenPaper.ts';
import { decideInBuilding } from '../../src/domain/building/joined.ts';
import { missingForOrder } from '../../src/domain/sets/forOrder.ts';

const demo = fewOf(demoProject());
const decisions = decideInBuilding(demo);
// The long search, once and here: `npm run mutate` asks each part hundreds of times.
for (const [id, decision] of decisions) {
  const opening = demo.openings[id];
  if (opening) missingForOrder(demo, opening, decision);
}
const accepted = readFileSync(new URL('demo-paper.txt', import.meta.url), 'utf8');

it.each(paperPartNames)('%s of the demo building are printed as accepted', (name) => {
  const [was, is] = [partOfPaper(accepted, name), paperParts[name](demo, decisions)];
  const [before, now] = [new Set(was), new Set(is)];
  const differences = [
    ...was.filter((one) => !now.has(one)).map((one) => `- ${one}`),
    ...is.filter((one) => !before.has(one)).map((one) => `+ ${one}`),
  ];
  expect(differences, 'Read each line; accept with `npx tsx scripts/demo.ts --accept`.').toEqual([]);
  expect(is).toEqual(was);
});
