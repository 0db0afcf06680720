import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { importRows } from '../../domain/import/csv.ts';
import type { Fact, Facts } from '../../domain/model/fact.ts';
import { openingFactKeys } from '../../domain/model/fields.ts';
import { newOpening, newProject } from '../../domain/model/newProject.ts';
import { someFacts } from '../../domain/testing/arbitraries.ts';
import { withoutGuard } from './cells.ts';
import { factsCsv } from './factsCsv.ts';
import { readCsv } from './readCsv.ts';

/** Values without who and when: a CSV has no place for those. Sources as a person writes them, in one line. */
function bare(facts: Facts): Facts {
  const entries = Object.entries(facts as Record<string, Fact<unknown>>).map(([key, fact]) => [
    key,
    fact.is === 'unknown'
      ? { is: 'unknown' }
      : fact.is === 'known'
        ? { is: 'known', value: fact.value }
        : { is: 'assumed', value: fact.value, from: `plan ${fact.from.length}, (sheet "B")` },
  ]);
  return Object.fromEntries(entries) as Facts;
}

describe('CSV of the survey', () => {
  it('comes back fact for fact through the import', () => {
    fc.assert(
      fc.property(fc.array(someFacts(openingFactKeys), { minLength: 1, maxLength: 4 }), (list) => {
        const openings = Object.fromEntries(
          list.map((facts, index) => [
            `o${index}`,
            { ...newOpening(`o${index}`, `=${index}`), facts: bare(facts), notes: 'a;b,"c"\nd' },
          ]),
        );
        const read = readCsv(factsCsv({ ...newProject('p', 'P'), openings }));
        expect(read.ok).toBe(true);
        if (!read.ok) return;
        const [header = [], ...rows] = read.table.map((row) => row.map(withoutGuard));
        let count = 0;
        const back = importRows(header, rows, { newId: () => `n${(count += 1)}` });
        expect(back.problems).toEqual([]);
        expect(back.openings.map(({ mark, facts, notes }) => ({ mark, facts, notes }))).toEqual(
          Object.values(openings).map(({ mark, facts, notes }) => ({ mark, facts, notes })),
        );
      }),
      { numRuns: 60 },
    );
  });
});

describe('reading a CSV', () => {
  it.each([
    ['commas', 'mark,notes\r\n1,"a,b"\r\n'],
    ['semicolons', 'mark;notes\n1;a,b\n'],
    ['tabs', 'mark\tnotes\n1\ta,b\n'],
    ['a byte-order mark', '\uFEFFmark,notes\n1,"a,b"\n'],
  ])('%s', (_name, text) => {
    expect(readCsv(text)).toMatchObject({
      ok: true,
      table: [
        ['mark', 'notes'],
        ['1', 'a,b'],
      ],
    });
  });

  it('keeps blank lines, so that rows are counted as in the file', () => {
    const read = readCsv('mark,notes\n\n1,a\n');
    expect(read.ok && read.table.length).toBe(3);
  });

  it.each([
    ['nothing', '', 'The file is empty.'],
    ['blanks', ' \n ', 'The file is empty.'],
    ['an open quotation mark', 'mark,notes\n1,"a\n2,b\n', 'A quotation mark is not closed'],
    ['zero bytes', 'm\u0000a\u0000', 'not plain text'],
  ])('%s is refused with a sentence', (_name, text, says) => {
    const read = readCsv(text);
    expect(read.ok ? '' : read.says).toContain(says);
  });
});
