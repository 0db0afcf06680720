import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { factSchemas } from '../model/fields.ts';
import type { Project } from '../model/project.ts';
import { readFact } from '../survey/readFact.ts';
import { aProject, aValueOf } from '../testing/arbitraries.ts';
import { known } from '../testing/facts.ts';
import { valueInWords } from '../text/format.ts';
import { allColumns, copyText, type GridRow } from './columns.ts';
import { copied, planPaste } from './paste.ts';
import { changesIn, inOrderOfTrouble, needsALook, planInWords } from './plan.ts';
import { aSmallProject, after, column, columns, door, gridOf, house, ids } from '../testing/grids.ts';

const outcomeOf = ({ mark, head, text, outcome }: ReturnType<typeof inOrderOfTrouble>[number]) =>
  `${mark}, ${head}: “${text}”. ${outcome}`;
/** Without who entered a fact and when: an answer that stands there already keeps its stamp. */
const bare = ({ openings }: Project) =>
  Object.values(openings).map(({ facts }) =>
    Object.entries(facts).map(([key, fact]) => [key, { ...fact, at: undefined, by: undefined }]),
  );
describe('copy and paste', () => {
  test('what is copied and pasted over itself changes nothing, in any project', () => {
    fc.assert(
      fc.property(aProject, (project) => {
        const { rows, ground } = gridOf(project);
        const part = { rows, columns: allColumns };
        const box = { top: 0, left: 0, bottom: rows.length - 1, right: allColumns.length - 1 };
        const plan = planPaste(copied(part, ground), part, box, ground, ids());
        return plan.edits.length === 0 && (rows.length === 0 || !needsALook(plan));
      }),
      { numRuns: 12 },
    );
  });

  test('a paste is the same as each of its cells typed by itself, in turn', () => {
    const facts = ['doorType', 'latch', 'fireRatingMin', 'leafWidthIn', 'panicPresent'] as const;
    const texts = fc.oneof(
      fc.constantFrom(
        '?',
        'unknown',
        'Mortise latch',
        '90 min',
        'yes',
        '36',
        '915 mm',
        'Pair of leaves',
        'x',
        '45 ft',
      ),
      fc.string({ maxLength: 5 }),
    );
    fc.assert(
      fc.property(
        aSmallProject,
        fc.array(fc.tuple(...facts.map(() => texts)), { minLength: 1, maxLength: 4 }),
        (project, cells) => {
          const { rows, ground } = gridOf(project);
          const part = { rows, columns: columns(...facts) };
          const box = { top: 0, left: 0, bottom: 0, right: 0 };
          const pasted = after(project, planPaste(cells, part, box, ground, ids(), 'clear').edits);
          let typed = project;
          cells.slice(0, rows.length).forEach((line, r) =>
            line.forEach((text, c) => {
              const [row, fact] = [rows[r], facts[c]];
              if (!row || !fact) return;
              if (text.trim() === copyText(column(fact), row, ground).trim()) return;
              const read = readFact(fact, text);
              if (read.ok)
                typed = after(typed, [{ kind: 'setFact', id: row.opening.id, fact, value: read.fact }]);
            }),
          );
          expect(bare(pasted)).toEqual(bare(typed));
        },
      ),
      { numRuns: 25 },
    );
  });

  test('every answer of every field comes back from its own words', () => {
    const { rows, ground } = gridOf(house(door('1')));
    const [row] = rows as [GridRow];
    for (const { fact } of allColumns) {
      if (fact === undefined) continue;
      fc.assert(
        fc.property(aValueOf(fact), (value) => {
          const answered = { ...row, opening: { ...row.opening, facts: { [fact]: known(value) } } };
          const text = copyText(column(fact), answered, ground);
          expect(readFact(fact, text)).toMatchObject({ ok: true, fact: { is: 'known', value } });
        }),
        { numRuns: 20 },
      );
    }
  });

  test('one of a thing is read as it is written', () => {
    for (const { fact } of allColumns) {
      if (fact === undefined || !factSchemas[fact].safeParse(1).success) continue;
      expect(readFact(fact, valueInWords(fact, 1))).toMatchObject({ ok: true, fact: { value: 1 } });
    }
  });

  test('what is assumed stays assumed where it is pasted', () => {
    const project = house(
      door('1', { facts: { latch: { is: 'assumed', value: 'mortise', from: 'plan A-601' } } }),
      door('2'),
    );
    const { rows, ground } = gridOf(project);
    const part = { rows, columns: columns('latch') };
    const text = copied({ ...part, rows: rows.slice(0, 1) }, ground);
    const { openings } = after(
      project,
      planPaste(text, part, { top: 1, bottom: 1, left: 0, right: 0 }, ground, ids()).edits,
    );
    expect(openings['2']?.facts.latch).toMatchObject({ is: 'assumed', from: 'plan A-601' });
  });

  test('bad cells are named, the others are taken', () => {
    const project = house(door('1', { facts: { latch: known('mortise') } }), door('2'));
    const { rows, ground } = gridOf(project);
    const part = { rows, columns: columns('mark', 'latch', 'fireRatingMin', 'leafWidthIn', 'state') };
    const box = { top: 0, bottom: 0, left: 0, right: 0 };
    const plan = planPaste(
      [
        ['1', 'glue', '3/4 HR', '36 min', 'Settled', 'more'],
        ['1', '', 'NR', '', '', ''],
        ['3', 'Mortise latch', '', '', '', ''],
      ],
      part,
      box,
      ground,
      ids(),
    );
    expect(
      inOrderOfTrouble(plan)
        .filter(({ is }) => is === 'refused')
        .map(outcomeOf),
    ).toEqual([
      expect.stringMatching(
        /^1, Latch: “glue”. Refused: Latch or exit device cannot be “glue”; it may be .*Mortise latch/,
      ),
      expect.stringMatching(/^1, Leaf width: “36 min”\. Refused: /),
      '1, State: “Settled”. Refused: State is worked out from the facts and cannot be entered.',
      '2, Mark: “1”. Refused: Mark 1 is already used; every opening needs a mark of its own.',
    ]);
    expect(plan.outside).toEqual([
      '1 column too many: the schedule ends before it. The first reads “more”.',
      '1 row too many: a paste makes no new openings; import a door list under Files instead. The first reads “3”.',
    ]);
    expect(planInWords(plan)).toBe(
      '2 cells change. 4 cells are refused and stay as they are. 1 cell already reads that. 3 cells are empty and change nothing.',
    );
    const { openings } = after(project, plan.edits);
    expect(openings['1']?.facts).toMatchObject({ latch: known('mortise'), fireRatingMin: known(45) });
    expect(openings['2']?.facts).toMatchObject({ fireRatingMin: known(0) });
  });

  test('marks move on in one paste: one that was given up is free for the next', () => {
    const project = house(door('1'), door('2'));
    const { rows, ground } = gridOf(project);
    const part = { rows, columns: columns('mark') };
    const plan = planPaste([['9'], ['1']], part, { top: 0, bottom: 0, left: 0, right: 0 }, ground, ids());
    const { openings } = after(project, plan.edits);
    expect([openings['1']?.mark, openings['2']?.mark]).toEqual(['9', '1']);
  });

  test('one copied cell fills the whole selection', () => {
    const { rows, ground } = gridOf(house(door('1'), door('2'), door('3')));
    const part = { rows, columns: columns('mark', 'latch', 'panicPresent') };
    const plan = planPaste([['yes']], part, { top: 0, bottom: 2, left: 2, right: 2 }, ground, ids());
    expect(changesIn(plan)).toBe(3);
  });

  test('a floor and spaces that are named for the first time are made once', () => {
    const project = house(door('1'), door('2'));
    const { rows, ground } = gridOf(project);
    const part = { rows, columns: columns('to', 'floor') };
    const lines = [
      ['Lab 2', 'Third'],
      ['lab 2', 'third'],
    ];
    const plan = planPaste(lines, part, { top: 0, bottom: 0, left: 0, right: 0 }, ground, ids());
    const result = after(project, plan.edits);
    expect(plan.cells[0]?.after).toBe('Lab 2 (new space)');
    const [floor, space] = [Object.values(result.floors), Object.values(result.spaces)];
    expect([floor.length, space.length]).toEqual([1, 1]);
    expect(space[0]?.floorId).toBe(floor[0]?.id);
    expect(result.openings['2']).toMatchObject({ toSpaceId: space[0]?.id, floorId: floor[0]?.id });
  });
});
