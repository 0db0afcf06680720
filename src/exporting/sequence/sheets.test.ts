import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { inRoot } from '../../../scripts/lib/repo.mjs';
import { decideAll } from '../../domain/decide/decide.ts';
import type { Project } from '../../domain/model/project.ts';
import { type SequenceSheet, sequenceSheets, type TestSheet, testSheets } from './sheets.ts';

let sequences: readonly SequenceSheet[];
let tests: readonly TestSheet[];
beforeAll(() => {
  const { project } = JSON.parse(readFileSync(inRoot('demo-data/demo-building.json'), 'utf8')) as {
    project: Project;
  };
  const decisions = decideAll(project);
  sequences = sequenceSheets(project, decisions);
  tests = testSheets(project, decisions);
});

const said = (mark: string, event: string) =>
  sequences.find((one) => one.marks.includes(mark))?.lines.find((one) => one.event === event)?.says ?? '';

describe('sequence of operation', () => {
  test('every opening that was run stands on exactly one sheet', () => {
    const marks = sequences.flatMap((one) => one.marks);
    expect(marks.toSorted()).toEqual(tests.map((one) => one.mark).toSorted());
    expect(new Set(marks).size).toBe(marks.length);
  });
  test('the magnet of the demo: button, battery and alarm in words', () => {
    expect(said('106', 'Normal, secured')).toBe(
      'The magnet locks the outside. No latch holds the leaf. The coil is energized.',
    );
    expect(said('106', 'Exit sensor and button')).toContain('at least 30 s');
    expect(said('106', 'Line power lost')).toContain('carries it for 4 h');
    expect(said('106', 'Fire alarm')).toContain('until the alarm is reset');
  });
  test('whole sentences without gaps', () => {
    for (const { lines } of sequences) {
      for (const { says } of lines) expect(says).toMatch(/^[A-Z][^{}]*\.$/);
    }
  });
  test('what is not settled says so', () => {
    expect(sequences.find((one) => one.marks.includes('208'))?.provisional).toContain('208');
  });
});

describe('functional acceptance test', () => {
  const linesOf = (mark: string) => tests.find((one) => one.mark === mark)?.lines ?? [];
  test('lines are numbered without a gap, and each says what to do and what must happen', () => {
    for (const { lines } of tests) {
      expect(lines.map((one) => one.number)).toEqual(lines.map((_line, index) => index + 1));
      for (const { act, expect: expected } of lines) {
        expect(act).toMatch(/\.$/);
        expect(expected).toMatch(/^[A-Z].*\.$/);
      }
    }
  });
  test('a magnet is tested for its button, its residue and every loss of power', () => {
    const abouts = linesOf('106').map((one) => one.about);
    expect(abouts).toEqual(
      expect.arrayContaining(['Exit button', 'Magnet', 'Battery exhausted', 'Fire alarm']),
    );
    expect(linesOf('106').find((one) => one.about === 'Battery exhausted')?.expect).toBe(
      'Outside unlocked; leaving free; not latched; coil not energized; no alarm.',
    );
  });
  test('a delayed door is pushed as the adopted text says and never as a trick', () => {
    const delayed = tests.find((one) => one.title.includes('Delayed egress'));
    expect(delayed?.lines.map((one) => one.about)).toContain('Delay');
    expect(delayed?.lines.map((one) => one.about)).not.toContain('Short push');
  });
});
