// The page on the project file names every table and every step, or a program that reads the file is left guessing.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { inRoot } from '../../scripts/lib/repo.mjs';
import { projectSchema } from '../../src/domain/model/project.ts';
import { migrations, newestFormat } from '../../src/domain/versions/migrations.ts';

const page = readFileSync(inRoot('docs', 'spec', 'project-file.md'), 'utf8');

test('project-file.md names every part of a project', () => {
  const missing = Object.keys(projectSchema.shape).filter((key) => !page.includes(`\`${key}\``));
  expect(missing).toEqual([]);
});

test('project-file.md names every step with the format it leads to, and the newest format', () => {
  const missing = migrations.filter(({ to, name }) => !page.includes(`| ${to} | \`${name}\`: `));
  expect(missing.map(({ name }) => name)).toEqual([]);
  expect(page).toContain(`"formatVersion": ${newestFormat}`);
});
