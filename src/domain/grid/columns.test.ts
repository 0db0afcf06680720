import { expect, test } from 'vitest';
import type { Facts } from '../model/fact.ts';
import { newOpening, newProject } from '../model/newProject.ts';
import { decide } from '../decide/decide.ts';
import { known } from '../testing/facts.ts';
import type { Opening, Project } from '../model/project.ts';
import type { Sight, Verdict } from '../model/verdict.ts';
import { reviewStateWords } from '../review/words.ts';
import { verdictOn, withVerdict } from '../testing/verdicts.ts';
import { scheduleRows } from '../schedules/openings.ts';
import { columnOf, groundOf } from './columns.ts';
import { foundInWords, undecided } from './placeColumns.ts';

function projectOf(openings: Readonly<Record<string, Facts>>): Project {
  const entries = Object.entries(openings).map(([mark, facts]): [string, Opening] => [
    mark,
    { ...newOpening(mark, mark), facts },
  ]);
  return { ...newProject('p', 'House'), openings: Object.fromEntries(entries) };
}

test('a cell shows the answer of its own door, then the building’s, and “not known” hides both', () => {
  const openings = projectOf({
    own: { readerSides: known('both') },
    usual: {},
    cannotTell: { readerSides: { is: 'unknown' } },
  });
  const project: Project = { ...openings, building: { readerSides: known('secure') } };
  const text = (mark: string) => {
    const opening = project.openings[mark] as Opening;
    const reader = columnOf('readerSides');
    const decision = decide(project, opening);
    return reader?.text({ opening, decision, state: decision.state }, groundOf(project, new Map()));
  };
  expect(text('own')).toBe('Readers on both sides');
  expect(text('usual')).toBe('Reader on the secure side');
  expect(text('cannotTell')).toBe('?');
});

test('what the grid says about names is what the door schedule prints, a stale mark is never signed', () => {
  const asked = projectOf({
    '101': {
      doorType: known('single'),
      latch: known('rimExit'),
      egressRole: known('stairEntry'),
      stairLockWanted: known('both'),
      readerSides: known('secure'),
    },
  });
  const opening = Object.values(asked.openings)[0] as Opening;
  const decision = decide(asked, opening);
  const said = (...others: readonly Partial<Verdict>[]) => {
    const project = others.reduce(
      (before: Project, other) => withVerdict(before, verdictOn(before, [{ opening, decision }], other)),
      asked,
    );
    const [row] = scheduleRows(project, new Map([[opening.id, decision]]));
    const text = columnOf('signOff')?.text(
      { opening, decision, state: decision.state },
      groundOf(project, new Map()),
    );
    // A narrow cell shows how a word of the print begins, and no other.
    expect(row?.signature.some((word) => text !== undefined && word.startsWith(text))).toBe(true);
    return text;
  };
  const { openings: saw, ...around } = verdictOn(asked, [{ opening, decision }]).saw;
  const other = {
    ...around,
    openings: { [opening.id]: { ...(saw[opening.id] as Sight), candidate: 'another' } },
  };
  expect(said()).toBe('Must be signed');
  expect(said({ verdict: 'approved' })).toBe('Approved');
  expect(said({ verdict: 'approvedWithConditions' })).toBe(reviewStateWords.approvedWithConditions);
  expect(said({ verdict: 'refused' })).toContain(reviewStateWords.refused);
  expect(said({ verdict: 'refused' }, { verdict: 'approved' })).toContain(reviewStateWords.refused);
  expect(said({ verdict: 'passedToAuthority' })).toContain(reviewStateWords.passedToAuthority);
  expect(said({ verdict: 'approved', saw: other })).toBe('Stale');
});

test('before anything is decided each opening says where it is, and nothing of a decision', () => {
  const marks = Array.from({ length: 70 }, (_, at) => `D${at + 1}`);
  const project = projectOf(Object.fromEntries(marks.map((mark) => [mark, {}])));
  const all = Object.values(project.openings);
  const few = undecided(all.slice(0, 2), false);
  const cells = few.columns.map((column) =>
    column.text({ opening: few.openings[0] as Opening }, { project }),
  );
  expect(cells).toEqual(['D1', '', '', '', 'Deciding…']);
  expect([few.says, few.waits]).toEqual([
    '2 openings, being decided',
    'Search and filters apply once they are decided.',
  ]);
  const many = undecided(all, true);
  expect([many.openings.length, many.says, many.waits]).toEqual([
    60,
    '70 openings, being decided',
    'The first 60 are listed until then. Search and filters apply once they are decided.',
  ]);
  expect(many.columns.map(({ head }) => head)).toEqual([
    'Mark',
    'State',
    'Floor',
    'Secure side',
    'Egress side',
  ]);
});

test('one opening is one', () => {
  expect([foundInWords(1, 1), foundInWords(0, 1), foundInWords(2, 3)]).toEqual([
    '1 opening',
    '0 of 1 opening',
    '2 of 3 openings',
  ]);
});
