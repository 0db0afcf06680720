import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect, test } from 'vitest';
import { buildingFindingsFor, decisionsInBuilding } from '../../src/app/buildings.ts';
import { decisionsFile, decisionsText } from '../../src/exporting/jsonl/decisionsFile.ts';
import { decisionRecordSchema } from '../../src/exporting/jsonl/schema.ts';
import { demoProject } from '../demo/demoProject.ts';
import { inRoot } from './repo.mjs';
import { decisionsSchemaText } from './schema-document.ts';

const published = readFileSync(inRoot('docs', 'spec', 'decisions.schema.json'), 'utf8');
const demo = demoProject();
const text = decisionsText(decisionsFile(demo, decisionsInBuilding(demo), buildingFindingsFor(demo)));
// A checker of its own: what others will read our file with.
const check = new Ajv2020({ strict: true, allowUnionTypes: true, allErrors: true }).compile(
  JSON.parse(published),
);

test('the published schema is the one the writers go by', () => {
  expect(published).toBe(decisionsSchemaText());
});

test('the decisions of the demo building are what the schema says', () => {
  check(JSON.parse(text));
  expect(check.errors ?? []).toEqual([]);
  expect(JSON.parse(text).openings).toHaveLength(Object.keys(demo.openings).length);
});

test('what the schema does not know is found: another state, a missing mark, one key more', () => {
  const broken = JSON.parse(text);
  broken.openings[0].state = 'approved';
  delete broken.openings[1].mark;
  broken.openings[2].more = 1;
  check(broken);
  expect(check.errors?.map(({ instancePath }) => instancePath)).toEqual([
    '/openings/0/state',
    '/openings/1',
    '/openings/2',
  ]);
});

test('each key of a line about an opening has its row in assess.md', () => {
  const rows = readFileSync(inRoot('docs', 'spec', 'assess.md'), 'utf8');
  const missing = Object.keys(decisionRecordSchema.shape).filter((key) => !rows.includes(`\`${key}\``));
  expect(missing).toEqual([]);
});
