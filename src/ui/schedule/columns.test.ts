import { expect, test } from 'vitest';
import { projectOf } from '../../../tests/screens/show.tsx';
import { decide } from '../../domain/decide/decide.ts';
import { known } from '../../domain/model/fact.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import { reviewStateWords, whatReviewerSaw } from '../../domain/schedules/review.ts';
import { scheduleRows } from '../../domain/schedules/openings.ts';
import { columns } from './columns.ts';

test('a cell shows the answer of its own door, then the building’s, and “not known” hides both', () => {
  const openings = projectOf({
    own: { readerSides: known('both') },
    usual: {},
    cannotTell: { readerSides: { is: 'unknown' } },
  });
  const project: Project = { ...openings, building: { readerSides: known('secure') } };
  const text = (mark: string) => {
    const opening = project.openings[mark] as Opening;
    const reader = columns.find(({ key }) => key === 'readerSides');
    const decision = decide(project, opening);
    return reader?.text({ opening, decision, state: decision.state }, project);
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
  const saw = { ...whatReviewerSaw(decide(asked, opening)) };
  const stale = { ...saw, basis: 'another' };
  const said = (review: Opening['review']) => {
    const project: Project = { ...asked, openings: { [opening.id]: { ...opening, review } } };
    const reviewed = project.openings[opening.id] as Opening;
    const decision = decide(project, reviewed);
    const [row] = scheduleRows(project, new Map([[opening.id, decision]]));
    const text = columns
      .find(({ key }) => key === 'signOff')
      ?.text({ opening: reviewed, decision, state: decision.state }, project);
    // A narrow cell shows how a word of the print begins, and no other.
    expect(row?.signature.some((word) => text !== undefined && word.startsWith(text))).toBe(true);
    return text;
  };
  const mark = { by: 'Reviewer', on: '2026-03-02', reason: '', saw };
  expect(said(null)).toBe('Must be signed');
  expect(said({ ...mark, verdict: 'approved' })).toBe('Approved');
  expect(said({ ...mark, verdict: 'refused' })).toContain(reviewStateWords.refused);
  expect(said({ ...mark, verdict: 'toAhj' })).toContain(reviewStateWords.toAhj);
  expect(said({ ...mark, verdict: 'approved', saw: stale })).toBe('Stale');
});
