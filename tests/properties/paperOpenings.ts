import { readFileSync } from 'node:fs';
import { inRoot } from '../../scripts/lib/repo.mjs';
import { decide } from '../../src/domain/decide/decide.ts';
import type { Decision } from '../../src/domain/decide/decision.ts';
import { candidates } from '../../src/domain/devices/candidates.ts';
import type { Facts } from '../../src/domain/model/fact.ts';
import { newOpening, newProject } from '../../src/domain/model/newProject.ts';
import { type Opening, openingsInOrder, type Project } from '../../src/domain/model/project.ts';
import { thorough } from './effort.ts';
import type { Survey } from './surveys.ts';

/** Openings whose paper is held against what was decided for them, each in a project of its own. */
export interface OnPaper {
  readonly project: Project;
  readonly opening: Opening;
  readonly decision: Decision;
  /** What a failure is called by. */
  readonly name: string;
}

export const demo = (
  JSON.parse(readFileSync(inRoot('demo-data/demo-building.json'), 'utf8')) as { project: Project }
).project;
export const demoOpenings = openingsInOrder(demo);

export function onPaper(project: Project, opening: Opening): OnPaper {
  const alone = { ...project, openings: { [opening.id]: opening } };
  const decision = decide(alone, opening);
  const candidate = decision.chosen?.candidate ?? decision.overridden;
  return { project: alone, opening, decision, name: `${opening.mark} ${candidate?.id ?? decision.state}` };
}

export function withCandidate(opening: Opening, candidate: string): Opening {
  return { ...opening, override: { candidate, reason: 'tried', by: 'test', at: '2026-01-01' } };
}

/**
 * Every opening of the demo as decided, then with candidates in its place, one after the other: all of them in a
 * thorough run, else every ninth, beginning elsewhere at each opening so that each candidate has its turn.
 */
export function* everyDemoPaper(): Generator<OnPaper> {
  const every = thorough ? 1 : 9;
  for (const [place, opening] of demoOpenings.entries()) {
    yield onPaper(demo, opening);
    for (const [index, { id }] of candidates.entries())
      if ((index + place) % every === 0) yield onPaper(demo, withCandidate(opening, id));
  }
}

export function paperOf({ facts, basis }: Survey, candidate?: string): OnPaper {
  const known = Object.fromEntries(
    Object.entries(facts).map(([key, value]) => [key, { is: 'known', value }]),
  );
  const opening = { ...newOpening('o', 'X'), facts: known as Facts };
  return onPaper(
    { ...newProject('p', 'Tried'), basis },
    candidate === undefined ? opening : withCandidate(opening, candidate),
  );
}
