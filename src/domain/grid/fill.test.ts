import { describe, expect, test } from 'vitest';
import { known } from '../testing/facts.ts';
import { cleared, fillDown, planReplace, setForAll } from './fill.ts';
import { after, columns, door, gridOf, house, ids } from '../testing/grids.ts';

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
