import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { applyEdits, type Edit } from '../commands/command.ts';
import { applyCommand } from '../commands/stamp.ts';
import { historyOf, wasSeen } from '../model/history.ts';
import { newOpening, newProject } from '../model/newProject.ts';
import { changedParts, recordsOf } from '../model/parts.ts';
import { type Project, projectSchema } from '../model/project.ts';
import { textOf } from '../model/sorted.ts';
import { edited, threeCopies } from '../testing/copies.ts';
import { openDifferences } from './differences.ts';
import { mergeEdit, mergeProjects } from './merge.ts';
import { meaning, registerOf } from './register.ts';

const runs = { numRuns: 40 };
function same(a: Project, b: Project): void {
  expect(JSON.parse(textOf(a))).toEqual(JSON.parse(textOf(b)));
}

describe('copies of one project, edited apart', () => {
  test('it makes no difference which is merged into which', () => {
    fc.assert(
      fc.property(threeCopies, ({ a, b }) => same(mergeProjects(a, b), mergeProjects(b, a))),
      runs,
    );
  });

  test('nor in which order three are merged', () => {
    fc.assert(
      fc.property(threeCopies, ({ a, b, c }) =>
        same(mergeProjects(mergeProjects(a, b), c), mergeProjects(a, mergeProjects(b, c))),
      ),
      runs,
    );
  });

  test('nor how often', () => {
    fc.assert(
      fc.property(threeCopies, ({ a, b }) => {
        const both = mergeProjects(a, b);
        same(mergeProjects(both, b), both);
        same(mergeProjects(both, a), both);
        same(mergeProjects(both, both), both);
      }),
      runs,
    );
  });

  test('what only one of them changed stands as it was changed', () => {
    fc.assert(
      fc.property(threeCopies, ({ shared, a }) => {
        same({ ...mergeProjects(a, shared), history: historyOf(a) }, { ...a, history: historyOf(a) });
      }),
      runs,
    );
  });

  test('a wrong clock decides nothing: two who saw a door differently are asked, and who saw the other’s answer is believed', () => {
    const shared = { ...newProject('p', 'P'), openings: { a: newOpening('a', 'A') } };
    const rated = (value: number): Edit => ({
      kind: 'setFact',
      id: 'a',
      fact: 'fireRatingMin',
      value: { is: 'known', value },
    });
    for (const [annHour, bobHour] of [
      [9, 10],
      [23, 0],
    ] as const) {
      const ann = edited(shared, 'ann', [rated(20)], annHour);
      const both = mergeProjects(ann, edited(shared, 'bob', [rated(90)], bobHour));
      expect(both.openings['a']?.facts.fireRatingMin).toMatchObject({ is: 'unknown' });
      const [asked] = openDifferences(both);
      expect(asked?.sides.flatMap(({ by }) => by).toSorted()).toEqual(['ann', 'bob']);
      // Later in knowledge, whatever the clock says.
      const after = mergeProjects(ann, edited(ann, 'bob', [rated(45)], bobHour));
      expect(after.openings['a']?.facts.fireRatingMin).toMatchObject({ is: 'known', value: 45 });
      expect(openDifferences(after)).toEqual([]);
    }
  });

  test('nothing is lost: a value stands, is kept beside another, or was replaced by somebody who had seen it', () => {
    fc.assert(
      fc.property(threeCopies, ({ a, b }) => {
        const both = mergeProjects(a, b);
        const history = historyOf(both);
        const after = recordsOf(both);
        for (const [mine, other] of [
          [a, b],
          [b, a],
        ] as const) {
          for (const [record, fields] of recordsOf(mine, other)) {
            if (record === 'project' && fields.size === 0) continue;
            for (const [field, value] of fields) {
              const own = registerOf(historyOf(mine), record, field, value);
              if (own.every(({ dot }) => wasSeen(historyOf(other).seen, dot))) continue;
              const here = registerOf(history, record, field, after.get(record)?.get(field));
              expect(here.map((one) => meaning(one.value))).toContain(meaning(value));
            }
          }
        }
      }),
      runs,
    );
  });

  test('the merge is an edit: it gives the same, fits every check, and is taken back whole', () => {
    fc.assert(
      fc.property(threeCopies, ({ a, b }) => {
        const command = { id: 'm', at: '2026-03-09T08:00:00.000Z', by: '', label: 'Merge', device: 'x' };
        const done = applyCommand(a, { ...command, edits: [mergeEdit(a, b)] });
        if (!done.ok) throw new Error(JSON.stringify(done.problem));
        same(done.project, mergeProjects(a, b));
        expect(projectSchema.safeParse(done.project).success).toBe(true);
        const undone = applyEdits(done.project, done.inverse, true);
        expect(undone.ok && undone.project).toEqual(a);
      }),
      runs,
    );
  });

  test('the cases above are no empty ones', () => {
    const met = { conflicts: 0, removals: 0, changes: 0 };
    fc.assert(
      fc.property(threeCopies, ({ a, b }) => {
        const { kept } = historyOf(mergeProjects(a, b));
        if (changedParts(a, b).length > 0) met.changes += 1;
        for (const fields of Object.values(kept ?? {})) {
          if ('' in fields) met.removals += 1;
          else met.conflicts += 1;
        }
      }),
      // Of one seed, since a run of few copies may by chance meet no removal.
      { numRuns: 150, seed: 7 },
    );
    expect(Math.min(...Object.values(met))).toBeGreaterThan(0);
  });
});
