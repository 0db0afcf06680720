import fc from 'fast-check';
import { applyEdits, type Edit } from '../commands/command.ts';
import { decideAll } from '../decide/decide.ts';
import { columnOf, type GridColumn, type GridRow, groundOf } from '../grid/columns.ts';
import { newOpening, newProject, newSpace } from '../model/newProject.ts';
import type { Opening, Project } from '../model/project.ts';
import { someFacts } from './arbitraries.ts';

export const ids = () => {
  let count = 0;
  return () => `new-${++count}`;
};

/** All openings as rows, in the order they stand in, and what their cells are said with. */
export function gridOf(project: Project) {
  const decisions = decideAll(project);
  const rows = Object.values(project.openings).flatMap((opening): GridRow[] => {
    const decision = decisions.get(opening.id);
    return decision ? [{ opening, decision, state: decision.state }] : [];
  });
  return { rows, ground: groundOf(project, decisions) };
}

export const column = (key: string) => columnOf(key) as GridColumn;
export const columns = (...keys: readonly string[]) => keys.map(column);

/** A few openings with any facts, two floors and two spaces. */
export const aSmallProject = fc
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

export const door = (mark: string, more: Partial<Opening> = {}): Opening => ({
  ...newOpening(mark, mark),
  ...more,
});
export const house = (...openings: readonly Opening[]): Project => ({
  ...newProject('p', 'House'),
  openings: Object.fromEntries(openings.map((one) => [one.id, one])),
});
export const after = (project: Project, edits: readonly Edit[]): Project => {
  if (edits.length === 0) return project;
  const applied = applyEdits(project, edits);
  if (!applied.ok) throw new Error(JSON.stringify(applied.problem));
  return applied.project;
};
