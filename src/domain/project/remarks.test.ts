import { describe, expect, it } from 'vitest';
import { applyEdits, type Edit } from '../commands/command.ts';
import { applyCommand } from '../commands/stamp.ts';
import { mergeProjects } from '../merge/merge.ts';
import { newOpening, newProject } from '../model/newProject.ts';
import type { Opening, Project } from '../model/project.ts';
import type { Remark } from '../model/verdict.ts';
import {
  answerRemark,
  closeRemark,
  newRemark,
  openRemarksInWords,
  openRemarksOnPaper,
  remarkState,
  remarksAt,
} from './remarks.ts';

const opening: Opening = newOpening('a', '101');
const house: Project = { ...newProject('p', 'House'), openings: { a: opening } };
const at = '2026-03-02T09:00:00.000Z';
const hand = (id: string, by: string) => ({ id, by, at });
const asked = newRemark(opening, 'question', ' Which side is the stair? ', hand('q', 'A. Reviewer'));

let count = 0;
function on(project: Project, device: string, edit: Edit): Project {
  const command = { id: `c${(count += 1)}`, at, by: device, label: '', edits: [edit], device };
  const applied = applyCommand(project, command);
  if (!applied.ok) throw new Error(JSON.stringify(applied.problem));
  return applied.project;
}
const remark = (project: Project) => project.remarks['q'] as Remark;

describe('comments and questions at an opening', () => {
  it('are asked, answered, closed and opened again, and each step is undone', () => {
    let project = house;
    const steps = [
      () => asked,
      () => answerRemark(remark(project), 'The left one.', hand('r', 'B. Surveyor')),
      () => closeRemark(remark(project), hand('', 'A. Reviewer')),
      () => closeRemark(remark(project), null),
    ];
    const states = steps.map((step) => {
      const applied = applyEdits(project, [step()]);
      if (!applied.ok) throw new Error('refused');
      const back = applyEdits(applied.project, applied.inverse, true);
      expect(back.ok && back.project).toEqual(project);
      project = applied.project;
      return [remarkState(remark(project)), openRemarksInWords(remarksAt(project, 'a'))];
    });
    expect(states).toEqual([
      ['waits for an answer', '1 open question'],
      ['answered, not closed yet', '1 open question'],
      ['closed by A. Reviewer', ''],
      ['answered, not closed yet', '1 open question'],
    ]);
    expect(remark(project).text).toBe('Which side is the stair?');
  });

  it('merge: answers of two copies both stand, and closing on one side is no conflict', () => {
    const base = on(house, 'base', asked);
    const mine = on(base, 'mine', answerRemark(remark(base), 'Left.', hand('r1', 'B')));
    const answered = on(base, 'theirs', answerRemark(remark(base), 'North.', hand('r2', 'C')));
    const theirs = on(answered, 'theirs', closeRemark(remark(answered), hand('', 'C')));
    const merged = mergeProjects(mine, theirs);
    expect(Object.keys(remark(merged).answers).toSorted()).toEqual(['r1', 'r2']);
    expect(remark(merged).closed).toMatchObject({ by: 'C' });
    expect(merged.history?.kept).toBeUndefined();
  });

  it('print at their opening with the answers until they are closed', () => {
    const open = on(house, 'one', asked);
    const from = 'Question (A. Reviewer, 2026-03-02): Which side is the stair?';
    expect(openRemarksOnPaper(open, 'a')).toEqual([from]);
    expect(openRemarksOnPaper(open, 'b')).toEqual([]);
    const answered = on(open, 'two', answerRemark(remark(open), ' The left. ', hand('w', 'B. Surveyor')));
    expect(openRemarksOnPaper(answered, 'a')).toEqual([`${from} Answer: The left.`]);
    expect(
      openRemarksOnPaper(on(answered, 'one', closeRemark(remark(answered), hand('x', 'A. Reviewer'))), 'a'),
    ).toEqual([]);
  });
});
