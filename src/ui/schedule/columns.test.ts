import { expect, test } from 'vitest';
import { projectOf } from '../../../tests/screens/show.tsx';
import { decide } from '../../domain/decide/decide.ts';
import { known } from '../../domain/model/fact.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
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
    return reader?.text({ opening, decision: decide(project, opening) }, project);
  };
  expect(text('own')).toBe('Readers on both sides');
  expect(text('usual')).toBe('Reader on the secure side');
  expect(text('cannotTell')).toBe('?');
});
