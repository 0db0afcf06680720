import { candidateInWords } from '../../domain/words/arrangement.ts';
import type { Project } from '../../domain/model/project.ts';
import { someMarks } from '../../domain/power/figures.ts';
import type { PowerPlan } from '../../domain/power/powerPlan.ts';
import type { Decisions } from '../../domain/decide/decision.ts';
import { pointToPoint } from '../../domain/schedules/pointToPoint.ts';
import { setGroups } from '../../domain/sets/setGroups.ts';
import type { Drawing } from '../drawing/scene.ts';
import { wiring } from '../drawing/wiring.ts';

/** Point-to-point wiring of one hardware set, with the openings it holds for. */
export interface SetWiring {
  readonly id: string;
  readonly title: string;
  readonly marks: string;
  readonly closets: string;
  readonly drawing: Drawing;
}

/** A drawing for each set whose lock is fed over a wire; a set that is not has none. */
export function setWirings(
  project: Project,
  decisions: Decisions,
  plan: PowerPlan,
  paper: { readonly width: number; readonly reduced: number },
): readonly SetWiring[] {
  return setGroups(project, decisions).flatMap(({ number, stored, members }): readonly SetWiring[] => {
    const fed = members.flatMap(({ opening }) => plan.byId.get(opening.id) ?? []);
    const decision = members[0]?.decision;
    const wires =
      decision &&
      pointToPoint(
        decision,
        fed.flatMap(({ sizing }) => sizing?.gauge ?? []),
      );
    if (!wires) return [];
    const closets = new Set(
      fed.flatMap(({ placing }) =>
        placing.closetId === null ? [] : (project.closets[placing.closetId]?.name ?? []),
      ),
    );
    return [
      {
        id: number,
        title: stored?.name || (decision.chosen ? candidateInWords(decision.chosen.candidate) : ''),
        marks: someMarks(members.map(({ opening }) => opening.mark)),
        closets: closets.size === 0 ? 'closet not assigned' : [...closets].join(', '),
        drawing: wiring(wires, paper.width, paper.reduced),
      },
    ];
  });
}
