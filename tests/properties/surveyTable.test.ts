import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyEdits } from '../../src/domain/commands/command.ts';
import { compareAgain, importEdits } from '../../src/domain/import/again.ts';
import { importTable } from '../../src/domain/import/csv.ts';
import { bestTable } from '../../src/domain/import/sheets.ts';
import { findTable } from '../../src/domain/import/layout.ts';
import type { Fact, Facts } from '../../src/domain/model/fact.ts';
import { buildingFactKeys, openingFactKeys } from '../../src/domain/model/fields.ts';
import { newOpening, newProject, newSpace } from '../../src/domain/model/newProject.ts';
import type { Opening, Project } from '../../src/domain/model/project.ts';
import { someFacts } from '../../src/domain/testing/arbitraries.ts';
import { factsCsv, surveyTable } from '../../src/exporting/csv/factsCsv.ts';
import { workbookOf } from '../../src/exporting/xlsx/workbook.ts';
import { readSchedule } from '../../src/intake/readFile.ts';
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

/** What places are called: words an architect's schedule would be read by, long names, and signs that a cell has to quote. */
const aPlaceName = fc
  .oneof(
    fc.constantFrom(
      'Outside',
      'Stair 2',
      'CORRIDOR',
      'Level 2',
      'N/A',
      '-',
      'unknown',
      '101',
      '=A1',
      'a, "b"',
    ),
    fc.string({ minLength: 1, maxLength: 12 }).filter((name) => name.trim() !== ''),
    fc.constantFrom('x'.repeat(120), 'y'.repeat(60)),
  )
  .map((name) => name.replaceAll(/\s+/g, ' ').trim());

/** Lines and signs as somebody types or pastes them. */
const aNote = fc.oneof(
  fc.constantFrom(
    '',
    'Check the strike.',
    'a;b,"c"\nd',
    '=1+2',
    '  two spaces ahead',
    'end \n',
    "'quoted'",
    '-',
    'N/A',
  ),
  fc.string({ maxLength: 20 }),
);

/** A project with everything that the survey table says: places by their names, facts, facts of the building, notes, choices, GlobalIds. */
const surveyed = fc
  .record({
    building: someFacts(buildingFactKeys),
    names: fc.uniqueArray(aPlaceName, { minLength: 5, maxLength: 5, selector: (name) => name.toLowerCase() }),
    doors: fc.array(
      fc.record({
        facts: someFacts(openingFactKeys),
        notes: aNote,
        chosen: fc.boolean(),
        modeled: fc.boolean(),
        floor: fc.option(fc.constantFrom('f0', 'f1')),
        from: fc.option(fc.constantFrom('s0', 's1', 's2')),
        to: fc.option(fc.constantFrom('s0', 's1', 's2')),
      }),
      { minLength: 1, maxLength: 4 },
    ),
  })
  .map(
    ({ building, doors, names }): Project => ({
      ...newProject('p', 'P'),
      building: bare(building),
      floors: Object.fromEntries(
        names.slice(0, 2).map((name, at) => [`f${at}`, { id: `f${at}`, name, level: at }]),
      ),
      spaces: Object.fromEntries(names.slice(2).map((name, at) => [`s${at}`, newSpace(`s${at}`, name)])),
      openings: Object.fromEntries(
        doors.map(({ facts, notes, chosen, modeled, floor, from, to }, index) => [
          `o${index}`,
          {
            ...newOpening(`o${index}`, `10${index}`),
            facts: bare(facts),
            floorId: floor,
            fromSpaceId: from,
            toSpaceId: to,
            notes,
            override: chosen
              ? {
                  candidate: 'strike/safe/lever',
                  reason: 'The owner, “as built”.',
                  by: 'Kim',
                  at: '2026-01-01T00:00:00Z',
                }
              : null,
            ...(modeled ? { externalId: `G${index}` } : {}),
          },
        ]),
      ),
    }),
  );

const byMark = (a: { mark: string }, b: { mark: string }) => (a.mark < b.mark ? -1 : 1);

/** An opening with its places by name: ids are drawn anew. */
const said =
  ({ floors, spaces }: Project) =>
  ({ id: _id, floorId, fromSpaceId, toSpaceId, ...rest }: Opening) => ({
    ...rest,
    // Blanks around a cell are no part of it.
    notes: rest.notes.trim(),
    floor: floors[floorId ?? '']?.name,
    from: spaces[fromSpaceId ?? '']?.name,
    to: spaces[toSpaceId ?? '']?.name,
  });

async function tableIn(bytes: Uint8Array) {
  const read = await readSchedule(bytes);
  if (!read.ok) throw new Error(read.says);
  const found = bestTable(read.grids);
  if (!found.ok) throw new Error(found.says);
  return found.table;
}

describe('our own CSV and workbook', () => {
  it.each(['CSV', 'workbook'])(
    'as %s come back in whole, and say nothing new over the same project',
    async (kind) => {
      await fc.assert(
        fc.asyncProperty(surveyed, async (project) => {
          const survey = surveyTable(project);
          const bytes =
            kind === 'CSV'
              ? new TextEncoder().encode(factsCsv(project))
              : await workbookOf([{ name: 'Survey', head: survey.head, rows: survey.rows }]);
          const table = await tableIn(bytes);
          let count = 0;
          const newId = () => `n${(count += 1)}`;
          const first = importTable(table, { newId });
          expect(first.problems).toEqual([]);
          const applied = applyEdits(newProject('q', 'Q'), importEdits(newProject('q', 'Q'), first));
          if (!applied.ok) throw new Error(applied.problem.kind);
          expect(Object.values(applied.project.openings).map(said(applied.project)).toSorted(byMark)).toEqual(
            Object.values(project.openings).map(said(project)).toSorted(byMark),
          );
          expect(applied.project.building).toEqual(project.building);
          const again = compareAgain(project, importTable(table, { newId, into: project }));
          expect([again.added, again.changed, again.gone]).toEqual([[], [], []]);
        }),
        { numRuns: kind === 'CSV' ? 40 : 10 },
      );
    },
  );
});
