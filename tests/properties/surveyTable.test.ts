import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { importTable } from '../../src/domain/import/csv.ts';
import { findTable } from '../../src/domain/import/layout.ts';
import type { Fact, Facts } from '../../src/domain/model/fact.ts';
import { openingFactKeys } from '../../src/domain/model/fields.ts';
import { newOpening, newProject } from '../../src/domain/model/newProject.ts';
import { someFacts } from '../../src/domain/testing/arbitraries.ts';
import { factsCsv } from '../../src/exporting/csv/factsCsv.ts';
import { readCsv } from '../../src/intake/csv.ts';

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
        const table = findTable(read.grid);
        if (!table) throw new Error('no heading was found');
        let count = 0;
        const back = importTable(table, { newId: () => `n${(count += 1)}` });
        expect(back.problems).toEqual([]);
        expect(back.openings.map(({ mark, facts, notes }) => ({ mark, facts, notes }))).toEqual(
          Object.values(openings).map(({ mark, facts, notes }) => ({ mark, facts, notes })),
        );
      }),
      { numRuns: 60 },
    );
  });
});
