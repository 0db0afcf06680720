import type { Project } from '../../domain/model/project.ts';
import type { PowerPlan } from '../../domain/power/powerPlan.ts';
import type { Decisions } from '../../domain/decide/decision.ts';
import { powerPictures } from '../drawing/power-kinds.ts';
import type { Drawing } from '../drawing/scene.ts';
import { type PowerSheet, powerSheet } from './powerSheet.ts';
import { type SetWiring, setWirings } from './wiringSheet.ts';

/** Two stand beside each other on an upright page; letters of 0.17 in come out at 8.3 pt. */
const onPaper = { width: 3.6, reduced: 0.68 };

/** Power and cable as it is bound: tables, pictures, and the wiring of each set. */
export interface PowerPaper extends PowerSheet {
  readonly pictures: readonly Drawing[];
  readonly wirings: readonly SetWiring[];
}

export function powerPaper(project: Project, decisions: Decisions, plan: PowerPlan): PowerPaper {
  return {
    ...powerSheet(project, plan),
    // The tall riser last: what is left of the page before it is filled by the low pictures.
    pictures: powerPictures(project, plan, 'ownSheet').toReversed(),
    wirings: setWirings(project, decisions, plan, onPaper),
  };
}
