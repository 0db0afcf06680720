import type { Project } from '../model/project.ts';
import { type ApprovalCondition, conditionsAt } from '../review/conditionsAt.ts';
import type { SetMember } from './setGroups.ts';

/** A condition of an approval as a line of the set, with the openings of the set that stand under it. */
export interface SetCondition extends ApprovalCondition {
  readonly marks: readonly string[];
}

export function setConditions(project: Project, members: readonly SetMember[]): readonly SetCondition[] {
  const found = new Map<string, SetCondition & { readonly marks: string[] }>();
  for (const { opening, decision } of members) {
    for (const one of conditionsAt(project, opening, decision)) {
      const key = `${one.says}\n${one.from}`;
      const known = found.get(key);
      if (!known) found.set(key, { ...one, marks: [opening.mark] });
      else if (!known.marks.includes(opening.mark)) known.marks.push(opening.mark);
    }
  }
  return [...found.values()];
}
