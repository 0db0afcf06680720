import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { factKeys } from '../model/fields.ts';
import { openProjectText, saveProjectText } from './file.ts';
import { migrations, newestFormat } from './migrations.ts';

/** P4: every file we ever released opens, and says what was changed. */
const folder = new URL('../../../tests/files/', import.meta.url);
const files = readdirSync(folder).filter((name) => /^format-\d+\.json$/.test(name));
const formatOf = (name: string) => Number(/\d+/.exec(name)?.[0]);
const read = (name: string) => readFileSync(new URL(name, folder), 'utf8');

function open(name: string) {
  const opened = openProjectText(read(name));
  if (!opened.ok) throw new Error(`${name}: ${opened.problem.kind}`);
  return opened;
}

describe('P4: files of every release', () => {
  test('one is kept for each format that was released; the one in work is frozen with its release', () => {
    const formats = Array.from({ length: newestFormat }, (_, index) => index + 1);
    const kept = files.map(formatOf).toSorted((a, b) => a - b);
    expect(kept.length).toBeGreaterThanOrEqual(newestFormat - 1);
    expect(kept).toEqual(formats.slice(0, kept.length));
  });

  test.each(files)('%s opens whole and names each migration it went through', (name) => {
    const opened = open(name);
    expect(opened.setAside).toEqual([]);
    expect(opened.migrated).toEqual(
      migrations.filter((step) => step.to > formatOf(name)).map((step) => step.name),
    );
    expect(Object.values(opened.project.openings).map((opening) => opening.mark)).toEqual([
      '101',
      '102A',
      '103',
    ]);
    expect(Object.values(opened.project.verdicts).map(({ reason }) => reason)).toEqual([
      'Ask about the delay.',
    ]);
    expect(opened.project).toHaveProperty('fromANewerVersion', { kept: [1, 'two', null] });
    expect(opened.project.floors['f0']).toHaveProperty('colour');
    expect(opened.project.spaces['s1']?.occupantLoad).toBe(40);
    expect(opened.project.spaces['s1']?.areaFt2).toBe(formatOf(name) < 2 ? null : 5999.5);
    expect(Object.values(opened.project.hardwareSets).map((set) => set.number)).toEqual(
      formatOf(name) < 2 ? [] : ['HS-03'],
    );
  });

  test('the newest one is written today as it was then, byte for byte', () => {
    const frozen = files.filter((name) => formatOf(name) === newestFormat);
    expect(frozen.map((name) => saveProjectText(open(name).project))).toEqual(frozen.map(read));
  });

  test('the facts in the newest one are facts of today: a renamed key would be carried along unread', () => {
    const { openings, building } = open(`format-${files.length}.json`).project;
    const used = new Set(
      [...Object.values(openings).map(({ facts }) => facts), building].flatMap(Object.keys),
    );
    expect([...used].filter((key) => !(factKeys as readonly string[]).includes(key))).toEqual([]);
  });
});

test('migrations lead on without a gap, in order, and have names of their own', () => {
  const formats = [...new Set(migrations.map((step) => step.to))];
  expect(formats).toEqual(formats.map((_, index) => index + 2));
  expect(migrations.map((step) => step.to)).toEqual(
    migrations.map((step) => step.to).toSorted((a, b) => a - b),
  );
  expect(new Set(migrations.map((step) => step.name)).size).toBe(migrations.length);
});
