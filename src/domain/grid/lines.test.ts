import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Project } from '../model/project.ts';
import { known } from '../testing/facts.ts';
import { shortSignatures } from '../review/status.ts';
import { allColumns, groundOf, signatureAt } from './columns.ts';
import { isFound, linesOf, narrowed, valuesIn } from './lines.ts';
import { sortRows } from './sort.ts';
import { aSmallProject, door, gridOf, house } from '../testing/grids.ts';

describe('what is shown, and in which order', () => {
  test('sorting keeps every row, is stable, and puts last what nobody knows', () => {
    fc.assert(
      fc.property(aSmallProject, fc.constantFrom(...allColumns), fc.boolean(), (project, by, descending) => {
        const { rows, ground } = gridOf(project);
        const sorted = sortRows(rows, { column: by.key, descending }, ground);
        expect(new Set(sorted)).toEqual(new Set(rows));
        expect(sorted).toHaveLength(rows.length);
        expect(sortRows(sorted, { column: by.key, descending }, ground)).toEqual(sorted);
        const texts = sorted.map((row) => by.text(row, ground));
        const empty = texts.map((text) => ['', '?', '—'].includes(text));
        expect(empty).toEqual(empty.toSorted((a, b) => Number(a) - Number(b)));
        // Alike rows stand as they stood.
        const turned = sorted.filter((row, index) => {
          const next = sorted[index + 1];
          return next && texts[index] === texts[index + 1] && rows.indexOf(row) > rows.indexOf(next);
        });
        expect(turned).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });

  test('figures sort as figures, up and down', () => {
    const loads = [9, 100, undefined, 20];
    const { rows, ground } = gridOf(
      house(
        ...loads.map((load, at) =>
          door(`${at}`, load === undefined ? {} : { facts: { occupantLoad: known(load) } }),
        ),
      ),
    );
    const sorted = (descending: boolean) =>
      sortRows(rows, { column: 'occupantLoad', descending }, ground).map(
        ({ opening }) => opening.facts.occupantLoad?.is === 'known' && opening.facts.occupantLoad.value,
      );
    expect(sorted(false)).toEqual([9, 20, 100, false]);
    expect(sorted(true)).toEqual([100, 20, 9, false]);
  });

  test('a search finds a row by the words of each of its cells, and no filter hides a row that matches', () => {
    fc.assert(
      fc.property(aSmallProject, fc.constantFrom(...allColumns), (project, by) => {
        const { rows, ground } = gridOf(project);
        for (const row of rows)
          expect(isFound(row, by.key === 'set' ? '' : by.text(row, ground), ground)).toBe(true);
        const values = valuesIn(by, rows, ground);
        expect(values.reduce((sum, { count }) => sum + count, 0)).toBe(rows.length);
        for (const { value, count } of values) {
          const left = narrowed(rows, { [by.key]: [value] }, ground);
          expect(left).toHaveLength(count);
          expect(
            rows.filter((row) => !left.includes(row)).some((row) => by.text(row, ground) === value),
          ).toBe(false);
        }
      }),
      { numRuns: 40 },
    );
  });

  test('a signature is looked up only for a word that a signature can say', () => {
    const { rows, ground } = gridOf(house(door('101', {})));
    const [row] = rows;
    if (!row) throw new Error('No row.');
    Object.defineProperty(row.decision, 'signOffs', {
      get: () => {
        throw new Error('The signature was worked out.');
      },
    });
    for (const word of ['101', 'zzz', '1']) expect(isFound(row, word, ground)).toBe(word !== 'zzz');
    expect(() => isFound(row, 'looked', ground)).toThrow('worked out');
  });

  test('what a signature says in short is known ahead, whatever the project', () => {
    fc.assert(
      fc.property(aSmallProject, (project) => {
        const { rows, ground } = gridOf(project);
        for (const row of rows) expect(['', ...shortSignatures]).toContain(signatureAt(row, ground).short);
      }),
      { numRuns: 40 },
    );
  });

  test('every word of a search must stand in the row, in any of its fields', () => {
    const { rows, ground } = gridOf(
      house(door('1', { notes: 'Check the frame.', facts: { latch: known('mortise') } }), door('2')),
    );
    const found = (typed: string) =>
      rows.filter((row) => isFound(row, typed, ground)).map(({ opening }) => opening.mark);
    expect([found('  '), found('FRAME mortise'), found('frame rim'), found('2')]).toEqual([
      ['1', '2'],
      ['1'],
      [],
      ['2'],
    ]);
  });

  test('groups hold every row once under its head; a folded one only counts them', () => {
    const { rows, ground } = gridOf(
      house(door('1', { floorId: 'g' }), door('2'), door('3', { floorId: 'f' }), door('4', { floorId: 'f' })),
    );
    const project: Project = {
      ...ground.project,
      floors: { f: { id: 'f', name: 'First', level: 1 }, g: { id: 'g', name: 'Second', level: 2 } },
    };
    const lines = (folded: readonly string[]) =>
      linesOf(rows, 'floor', new Set(folded), groundOf(project, new Map())).map((line) =>
        line.is === 'group' ? `${line.head}: ${line.says}` : line.row.opening.mark,
      );
    expect(lines([])).toEqual([
      'First: 2 openings, 2 not settled',
      '3',
      '4',
      'Second: 1 opening, 1 not settled',
      '1',
      'No floor: 1 opening, 1 not settled',
      '2',
    ]);
    expect(lines(['f'])).not.toContain('3');
    expect(lines(['f'])[0]).toBe('First: 2 openings, 2 not settled');
  });
});
