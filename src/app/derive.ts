import type { Opening, Project } from '../domain/model/project.ts';
import { impliedFor } from '../domain/plan/implied.ts';
import { orderedOpenings } from './order.ts';
import { rememberLast } from './rememberLast.ts';

/**
 * Answers are computed from the document and never stored. They are remembered by object identity: edits make
 * new objects only along the path they touch, so one edit has one door judged again and the rest is looked up.
 */

/** What an answer about one opening may rest on besides the opening itself. */
const sharedParts = (project: Project) => [
  project.basis,
  project.amendments,
  project.building,
  project.weights,
  project.spaces,
  project.floors,
];

/**
 * Remembers `fn` per opening until a shared part of the project becomes another object, or what the plan implies for
 * the opening does. Of other openings `fn` must read nothing else: their change would go unnoticed and a stale answer
 * would stay on screen.
 */
export function rememberByIdentity<T>(
  fn: (project: Project, opening: Opening) => T,
): (project: Project, opening: Opening) => T {
  let parts: readonly unknown[] = [];
  let remembered = new WeakMap<Opening, { readonly answer: T; readonly plan: string }>();
  return (project, opening) => {
    const now = sharedParts(project);
    if (now.length !== parts.length || now.some((part, index) => part !== parts[index])) {
      parts = now;
      remembered = new WeakMap();
    }
    const plan = impliedFor(project, opening).signature;
    const before = remembered.get(opening);
    if (before?.plan === plan) return before.answer;
    const answer = fn(project, opening);
    remembered.set(opening, { answer, plan });
    return answer;
  };
}

/** What a walk through the building reads of an opening. */
const walkedParts = [
  'mark',
  'floorId',
  'fromSpaceId',
  'toSpaceId',
  'facts',
  'override',
] as const satisfies readonly (keyof Opening)[];

/** Whether a walk through the one finds what a walk through the other does: a note or a review changes no building. */
export function sameBuilding(before: Project, after: Project): boolean {
  if (before === after) return true;
  const [was, is] = [sharedParts(before), sharedParts(after)];
  const ids = Object.keys(after.openings);
  if (was.some((part, at) => part !== is[at]) || ids.length !== Object.keys(before.openings).length)
    return false;
  return ids.every((id) => {
    const [one, other] = [before.openings[id], after.openings[id]];
    return one === other || (one && other && walkedParts.every((part) => one[part] === other[part]));
  });
}

/** One answer per opening id, each remembered by `answerFor`. */
export function rememberForAll<T>(
  answerFor: (project: Project, opening: Opening) => T,
): (project: Project) => ReadonlyMap<string, T> {
  return rememberLast(
    (project: Project) =>
      new Map(orderedOpenings(project).map((opening) => [opening.id, answerFor(project, opening)])),
  );
}
