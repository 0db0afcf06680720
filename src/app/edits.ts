import { type AnyFact, factAt, type Facts } from '../domain/model/fact.ts';
import { isFactKey } from '../domain/model/fields.ts';
import type { Edit } from '../domain/commands/command.ts';
import type { Project } from '../domain/model/project.ts';

/** Facts carry the time and author of the edit that set them, so two copies can be merged fact by fact. */
export function stamped(edits: readonly Edit[], at: string, by: string): readonly Edit[] {
  return edits.map((edit) => {
    const stamp = { at, ...(by === '' ? {} : { by }) };
    switch (edit.kind) {
      case 'setFact':
      case 'setBuildingFact':
      case 'setUsual':
        return edit.value === null ? edit : { ...edit, value: { ...stamp, ...edit.value } };
      case 'setRun':
        return edit.value === null ? edit : { ...edit, value: { ...stamp, ...edit.value } };
      case 'putProduct':
        return edit.value === null ? edit : { ...edit, value: { ...stamp, ...edit.value } };
      default:
        return edit;
    }
  });
}

/**
 * Leaving a field without typing must not fill the undo stack with steps that do nothing: the user would
 * press undo and see no change.
 */
export function changesNothing(project: Project, edit: Edit): boolean {
  switch (edit.kind) {
    case 'setProject':
      return project[edit.field] === edit.value;
    case 'setOpening':
      return (
        Object.hasOwn(project.openings, edit.id) && project.openings[edit.id]?.[edit.field] === edit.value
      );
    case 'setFact': {
      const opening = Object.hasOwn(project.openings, edit.id) ? project.openings[edit.id] : undefined;
      return opening !== undefined && sameFact(opening.facts, edit.fact, edit.value);
    }
    case 'setBuildingFact':
      return sameFact(project.building, edit.fact, edit.value);
    case 'setRun': {
      const run = Object.hasOwn(project.runs, edit.id) ? project.runs[edit.id] : undefined;
      return (run?.[edit.field]?.value ?? null) === (edit.value?.value ?? null);
    }
    case 'setUsual':
      return sameFact(project.usual, edit.fact, edit.value);
    default:
      return false;
  }
}

function sameFact(facts: Facts, key: string, next: AnyFact | null): boolean {
  const before = (isFactKey(key) ? factAt(facts, key) : undefined) ?? null;
  if (before === null || next === null) return before === next;
  const bare = (fact: AnyFact) =>
    JSON.stringify([
      fact.is,
      fact.is === 'unknown' ? null : fact.value,
      fact.is === 'assumed' ? fact.from : null,
    ]);
  return bare(before) === bare(next);
}
