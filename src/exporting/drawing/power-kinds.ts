import type { Project } from '../../domain/model/project.ts';
import type { PowerPlan } from '../../domain/power/powerPlan.ts';
import { dropChart } from './drop-chart.ts';
import { type DrawingKind, drawingsAt, type Place } from './kinds.ts';
import type { DrawingSize } from './paper.ts';
import { loadChart } from './load-chart.ts';
import { riser } from './riser.ts';
import type { Drawing } from './scene.ts';

interface Building {
  readonly project: Project;
  readonly plan: PowerPlan;
}

/** Two stand beside each other on a landscape sheet. */
const half = 4.8;
const onPaper: readonly DrawingSize[] = [{ width: half, height: 6, labels: 'words' }];
const narrow: readonly DrawingSize[] = [{ width: 5, height: 5, labels: 'words' }];

/** What is drawn of the building’s power as a whole, in order. */
export const buildingPowerDrawings: readonly DrawingKind<Building>[] = [
  {
    name: 'Riser of power and control',
    shows: 'The closets of each floor with their supplies and controllers, and the riser between them.',
    needs: 'A closet.',
    sizes: { desk: narrow, ownSheet: onPaper },
    make: ({ project, plan }, { width }) => riser(project, plan, width),
  },
  {
    name: 'Voltage drop against length',
    shows: 'Each lock run at the gauge of its cable, against the limits.',
    needs: 'A run whose length and lock are known.',
    sizes: { desk: narrow, ownSheet: onPaper },
    make: ({ plan }, { width }) => dropChart(plan.openings, width),
  },
];

/** The pictures of power: the building, then the load of each closet that has a supply. */
export function powerPictures(project: Project, plan: PowerPlan, place: Place = 'desk'): readonly Drawing[] {
  const width = place === 'desk' ? 5 : half;
  return [
    ...drawingsAt(buildingPowerDrawings, { project, plan }, place),
    ...plan.closets
      .filter(({ supplies }) => supplies.length > 0)
      .map(({ name, supplies }) => loadChart(`Load of ${name}`, supplies, width)),
  ];
}
