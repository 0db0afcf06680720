import fc from 'fast-check';
import type { Edit } from '../commands/command.ts';
import { applyCommand } from '../commands/stamp.ts';
import { newOpening } from '../model/newProject.ts';
import type { Project } from '../model/project.ts';
import { anEdit, aProject } from './arbitraries.ts';

/** Edits by one person in one copy; what does not fit is refused, as in life. */
export function edited(project: Project, device: string, list: readonly Edit[], hour = 8): Project {
  return list.reduce((now, edit, index) => {
    const at = `2026-03-0${device.length}T${String(hour).padStart(2, '0')}:${String(index).padStart(2, '0')}:00.000Z`;
    const command = { id: `${device}${hour}${index}`, at, by: device, label: '', edits: [edit], device };
    const applied = applyCommand(now, command);
    return applied.ok ? applied.project : now;
  }, project);
}

/** Edits of few parts, so that two people meet at one. */
const aMeeting: fc.Arbitrary<Edit> = fc.oneof(
  fc.record({
    kind: fc.constant('setFact' as const),
    id: fc.constantFrom('a', 'b'),
    fact: fc.constant('fireRatingMin'),
    value: fc.option(
      fc.oneof(
        fc.constantFrom(20, 45, 90).map((value) => ({ is: 'known' as const, value })),
        fc.constant({ is: 'assumed' as const, value: 60, from: 'A-601' }),
        fc.constant({ is: 'unknown' as const }),
      ),
    ),
  }),
  fc.record({
    kind: fc.constant('setOpening' as const),
    id: fc.constantFrom('a', 'b'),
    field: fc.constant('notes' as const),
    value: fc.constantFrom('one', 'two'),
  }),
  fc.constantFrom('a', 'b').map((id) => ({ kind: 'putOpening' as const, id, value: null })),
);
/** A merge brings a history of its own; it is tried by name. */
const oneEdit = anEdit.filter(({ kind }) => kind !== 'takeParts');
const someEdits = fc.array(fc.oneof(oneEdit, aMeeting), { maxLength: 4 });

/** One project and three copies of it that were edited apart. */
export const threeCopies = fc
  .record({ start: aProject, before: someEdits, first: someEdits, second: someEdits, third: someEdits })
  .map(({ start, before, first, second, third }) => {
    const openings = { ...start.openings, a: newOpening('a', 'A'), b: newOpening('b', 'B') };
    const shared = edited({ ...start, openings }, 'o', before);
    return {
      shared,
      a: edited(shared, 'an', first, 9),
      b: edited(shared, 'bob', second, 10),
      c: edited(shared, 'cleo', third, 11),
    };
  });
