import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { applyEdits, type Edit } from '../commands/command.ts';
import { decideAll } from '../decide/decide.ts';
import { newOpening, newProject, newSpace } from '../model/newProject.ts';
import type { Opening, Project } from '../model/project.ts';
import { aProject, aValueOf, someFacts } from '../testing/arbitraries.ts';
import { known } from '../testing/facts.ts';
import { allColumns, columnOf, copyText, type GridColumn, type GridRow, groundOf } from './columns.ts';
import { cleared, fillDown, planReplace, setForAll } from './fill.ts';
import { isFound, linesOf, narrowed, valuesIn } from './lines.ts';
import { copied, planPaste } from './paste.ts';
import { sortRows } from './sort.ts';
import { changesIn, inOrderOfTrouble, needsALook, planInWords, planTexts } from './plan.ts';
import { readFact } from '../survey/readFact.ts';

const ids = () => {
  let count = 0;
  return () => `new-${++count}`;
};

function gridOf(project: Project) {
  const decisions = decideAll(project);
  const rows = Object.values(project.openings).flatMap((opening): GridRow[] => {
    const decision = decisions.get(opening.id);
    return decision ? [{ opening, decision, state: decision.state }] : [];
  });
  return { rows, ground: groundOf(project, decisions) };
}

const column = (key: string) => columnOf(key) as GridColumn;
const columns = (...keys: readonly string[]) => keys.map(column);

/** A few openings with any facts, two floors and two spaces. */
const aSmallProject = fc
  .array(
    fc.record({
      facts: someFacts(),
      notes: fc.string({ maxLength: 8 }),
      at: fc.constantFrom('f', 'g', null),
    }),
    {
      minLength: 1,
      maxLength: 4,
    },
  )
  .map((doors): Project => {
    const openings = doors.map(
      ({ facts, notes, at }, index): Opening => ({
        ...newOpening(`o${index}`, `${101 + index}`),
        facts,
        notes,
        floorId: at,
        fromSpaceId: index % 2 === 0 ? 'c' : null,
        toSpaceId: 'r',
      }),
    );
    return {
      ...newProject('p', 'House'),
      floors: { f: { id: 'f', name: 'First', level: 1 }, g: { id: 'g', name: 'Second', level: 2 } },
      spaces: { c: { ...newSpace('c', 'Corridor'), floorId: 'f' }, r: newSpace('r', 'Room') },
      openings: Object.fromEntries(openings.map((one) => [one.id, one])),
    };
  });

const outcomeOf = ({ mark, head, text, outcome }: ReturnType<typeof inOrderOfTrouble>[number]) =>
  `${mark}, ${head}: “${text}”. ${outcome}`;
const door = (mark: string, more: Partial<Opening> = {}): Opening => ({ ...newOpening(mark, mark), ...more });
const house = (...openings: readonly Opening[]): Project => ({
  ...newProject('p', 'House'),
  openings: Object.fromEntries(openings.map((one) => [one.id, one])),
});
/** Without who entered a fact and when: an answer that stands there already keeps its stamp. */
const bare = ({ openings }: Project) =>
  Object.values(openings).map(({ facts }) =>
    Object.entries(facts).map(([key, fact]) => [key, { ...fact, at: undefined, by: undefined }]),
  );
const after = (project: Project, edits: readonly Edit[]): Project => {
  if (edits.length === 0) return project;
  const applied = applyEdits(project, edits);
  if (!applied.ok) throw new Error(JSON.stringify(applied.problem));
  return applied.project;
};

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
      '1 column too many: beyond the last column of the schedule there is no place for it. The first reads “more”.',
      '1 row too many: a paste makes no new openings; import a door list under Files instead. The first reads “3”.',
    ]);
    expect(planInWords(plan)).toBe(
      '2 cells change. 4 cells are refused and stay as they are. 1 cell already reads so. 3 cells are empty and change nothing.',
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

describe('fill, set, replace and clear', () => {
  const project = house(
    door('1', { facts: { latch: known('mortise') }, notes: 'Check the frame.' }),
    door('2', { facts: { latch: known('bored') } }),
    door('3'),
  );
  const { rows, ground } = gridOf(project);

  test('the first row is taken over as assumed; a mark is never filled', () => {
    const plan = fillDown({ rows, columns: columns('mark', 'latch', 'notes') }, ground);
    const { openings } = after(project, plan.edits);
    expect(openings['3']).toMatchObject({
      mark: '3',
      notes: 'Check the frame.',
      facts: { latch: { is: 'assumed', value: 'mortise', from: 'same as 1' } },
    });
    expect(plan.cells.filter(({ is }) => is === 'refused').map(({ says }) => says)).toEqual(
      Array.from({ length: 2 }, () => 'Every opening needs a mark of its own.'),
    );
  });

  test('one text for all, and clearing makes facts not known', () => {
    const part = { rows, columns: columns('latch') };
    const set = after(project, setForAll('Mortise latch', part, ground, ids()).edits);
    expect(Object.values(set.openings).map(({ facts }) => facts.latch)).toEqual(
      rows.map(() => known('mortise')),
    );
    const both = { rows, columns: columns('latch', 'notes') };
    const none = after(project, cleared(both, ground, ids()).edits);
    expect(none.openings['1']).toMatchObject({ notes: '', facts: { latch: { is: 'unknown' } } });
    expect(none.openings['3']?.facts.latch).toEqual({ is: 'unknown' });
  });

  test('words are replaced in the cells that hold them, as they would be typed', () => {
    const part = { rows, columns: columns('latch', 'notes') };
    const plan = planReplace(
      { find: 'MORTISE latch', by: 'Mortise latch with deadbolt', whole: false },
      part,
      ground,
      ids(),
    );
    expect(plan.cells).toHaveLength(1);
    expect(after(project, plan.edits).openings['1']?.facts.latch).toEqual(known('mortiseDeadbolt'));
    expect(planReplace({ find: 'frame', by: '$&', whole: false }, part, ground, ids()).cells[0]?.after).toBe(
      'Check the $&.',
    );
    expect(planReplace({ find: 'Check', by: '', whole: true }, part, ground, ids()).cells).toEqual([]);
    expect(planReplace({ find: '[', by: '', whole: false }, part, ground, ids()).cells).toEqual([]);
  });
});

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

  test('nothing is lost by planning texts in any order', () => {
    const { rows, ground } = gridOf(house(door('1'), door('2')));
    const targets = rows.map((row) => ({ row, column: column('mark'), text: `${row.opening.mark}A` }));
    expect(planTexts(targets, ground, ids()).cells.map(({ after: now }) => now)).toEqual(['1A', '2A']);
  });
});
