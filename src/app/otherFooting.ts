import { judgeBuilding } from '../domain/building/joined.ts';
import { decide } from '../domain/decide/decide.ts';
import type { Decision } from '../domain/decide/decision.ts';
import type { Opening, Project } from '../domain/model/project.ts';
import {
  type ComparedOpening,
  compareProject,
  onOtherBasis,
  type OtherBasis,
} from '../domain/schedules/otherBasis.ts';
import { decisionsInBuilding } from './buildings.ts';

/** A project on another footing, decided piece by piece and walked once, beside the project as it stands. */
export interface OtherFooting {
  readonly decideAhead: (opening: Opening) => void;
  readonly compared: () => readonly ComparedOpening[];
}

export const otherFooting = (project: Project, other: OtherBasis): OtherFooting =>
  beside(project, onOtherBasis(project, other));

/** The project as it stands and as it would be. */
export function beside(project: Project, there: Project): OtherFooting {
  const alone = new Map<string, Decision>();
  return {
    decideAhead: (opening) => void alone.set(opening.id, decide(there, opening)),
    compared: () =>
      compareProject(project, there, decisionsInBuilding(project), judgeBuilding(there, alone).decisions),
  };
}
