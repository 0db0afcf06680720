import { describe, expect, it } from 'vitest';
import type { Command, Edit } from '../commands/command.ts';
import { applyEdits } from '../commands/command.ts';
import { known } from '../testing/facts.ts';
import { newOpening, newProject } from '../model/newProject.ts';
import type { Project } from '../model/project.ts';
import { decide } from '../decide/decide.ts';
import { verdictOn, withVerdict } from '../testing/verdicts.ts';
import { historyLines } from './history.ts';

const house: Project = { ...newProject('p', 'House'), openings: { a: newOpening('a', '101') } };
const time = (minute: number) => `2026-03-02T09:${String(minute).padStart(2, '0')}:00.000Z`;

/** Edits as they are logged, one command each, a quarter of an hour apart unless said otherwise. */
function log(edits: readonly (Edit | readonly Edit[])[], step = 15, label = 'edit'): readonly Command[] {
  return edits.map((one, index) => ({
    id: `c${index}`,
    at: time(index * step),
    by: 'A. Surveyor',
    label,
    edits: [one].flat(),
  })) as readonly Command[];
}
const after = (project: Project, commands: readonly Command[]): Project =>
  commands.reduce((now, { edits }) => {
    const applied = applyEdits(now, edits);
    if (!applied.ok) throw new Error(JSON.stringify(applied.problem));
    return applied.project;
  }, project);
const rating = (value: number, at?: string): Edit => ({
  kind: 'setFact',
  id: 'a',
  fact: 'fireRatingMin',
  value: at === undefined ? known(value) : { ...known(value), at, by: 'A. Surveyor' },
});
const says = (project: Project, commands: readonly Command[], id?: string) =>
  historyLines(project, commands, id).map((line) => line.says);

describe('the history', () => {
  it('says who did what and when, from what to what, the newest first', () => {
    const commands = log([rating(45), rating(90)]);
    expect(historyLines(after(house, commands), commands, 'a')).toMatchObject([
      { at: time(15), by: 'A. Surveyor', says: 'Opening 101. Fire rating of the door: 45 min → 90 min.' },
      { at: time(0), says: 'Opening 101. Fire rating of the door: 45 min.' },
    ]);
  });

  it('tells what is typed letter by letter once, and what is typed after a pause apart', () => {
    const notes = (value: string): Edit => ({ kind: 'setOpening', id: 'a', field: 'notes', value });
    const typed = [notes('P'), notes('Pa'), notes('Paint')];
    expect(says(house, log(typed, 1))).toEqual(['Opening 101. Notes: Paint.']);
    expect(says(house, log(typed, 15))).toHaveLength(3);
  });

  it('names an opening that was removed since, as long as an edit tells its mark', () => {
    const opening = newOpening('b', '102');
    const commands = log([
      { kind: 'putOpening', id: 'b', value: { ...opening } },
      { kind: 'putOpening', id: 'b', value: null },
    ]);
    expect(says(after(house, commands), commands)).toEqual(['Opening 102 removed.', 'Opening 102 entered.']);
  });

  it('makes one line of an import, and tells each of its answers at the opening', () => {
    const keys = ['fireRatingMin', 'wallRatingMin'] as const;
    const many = Array.from(
      { length: 20 },
      (_, index): Edit => ({
        kind: 'setFact',
        id: 'a',
        fact: keys[index % 2] as string,
        value: known(45),
      }),
    );
    const commands = log([many], 1, 'Import of doors.csv');
    expect(says(house, commands)).toEqual(['Import of doors.csv: 20 changes at 1 opening.']);
    expect(says(house, commands, 'a').length).toBeGreaterThan(1);
  });

  it('says of an undo that it is one', () => {
    const [first] = log([rating(45)], 1, 'Undo: 101: fire rating');
    expect(says(house, [first as Command])).toEqual(['Undo. Opening 101. Fire rating of the door: 45 min.']);
  });

  it('still says who gave the answer that stands where the list of edits has ended', () => {
    const project = after(house, log([rating(90, time(3))]));
    expect(historyLines(project, [])).toMatchObject([
      { at: time(3), by: 'A. Surveyor', says: 'Opening 101. Fire rating of the door: 90 min.' },
    ]);
    // The edit itself tells it where it is still there: not twice.
    expect(historyLines(project, log([rating(90, time(3))]))).toHaveLength(1);
  });

  it('holds every verdict without any edit, and names one that is gone from the log', () => {
    const opening = house.openings['a'] as Project['openings'][string];
    const verdict = verdictOn(house, [{ opening, decision: decide(house, opening) }], {
      reason: 'As drawn.',
    });
    const commands = log([{ kind: 'appendVerdict', id: verdict.id, value: verdict }]);
    const told = ['Entry 1 of the log: Approved, dated 2026-03-02. As drawn.'];
    expect(says(withVerdict(house, verdict), [], 'a')).toEqual(told);
    expect(says(withVerdict(house, verdict), commands, 'a')).toEqual(told);
    expect(says(house, commands, 'a')).toEqual(['Not in the log of verdicts: Approved by J. Reviewer: 101.']);
  });
});
