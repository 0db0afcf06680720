import type { Project } from '../../domain/model/project.ts';
import type { ClosetState, PowerPlan } from '../../domain/power/powerPlan.ts';
import { counted } from '../../domain/text/counted.ts';
import { wrap } from './lettering.ts';
import { cut } from './load-chart.ts';
import { letterHeight, lineHeight } from './paper.ts';
import { type Drawing, textWidth } from './scene.ts';
import { pens, Sketch } from './sketch.ts';

const edge = 0.1;
const nameColumn = 1.35;
const boxWidth = 1.7;
const boxHeight = 3 * lineHeight + 0.1;
const gap = 0.2;

/**
 * The building as a riser: a line for each floor with a closet, the top one above, the closets on it as boxes with what
 * hangs in them, and the riser that joins the floors. Not to scale. Undefined where no closet is entered.
 */
export function riser(project: Project, plan: PowerPlan, paperWidth: number): Drawing | undefined {
  const closets = plan.closets.filter(({ closet }) => closet !== null);
  if (closets.length === 0) return undefined;
  const sketch = new Sketch(1);
  const perRow = Math.max(1, Math.floor((paperWidth - nameColumn - edge) / (boxWidth + gap)));
  const byFloor = new Map<string | null, ClosetState[]>();
  for (const state of closets) byFloor.set(state.floorId, [...(byFloor.get(state.floorId) ?? []), state]);
  const floors = [...byFloor].toSorted(([a], [b]) => levelOf(project, b) - levelOf(project, a));
  const riserX = nameColumn - 0.12;
  let y = 0.12;
  const joints: number[] = [];
  for (const [floorId, here] of floors) {
    const rows = Array.from({ length: Math.ceil(here.length / perRow) }, (_, row) =>
      here.slice(row * perRow, (row + 1) * perRow),
    );
    const name = floorId === null ? 'No floor' : (project.floors[floorId]?.name ?? 'No floor');
    const fits = Math.floor((nameColumn - 0.3) / textWidth('x', letterHeight));
    wrap(name, fits)
      .slice(0, 3)
      .forEach((line, i) =>
        sketch.text([edge, y + letterHeight + i * lineHeight], cut(line, fits), letterHeight, {
          strong: true,
        }),
      );
    for (const row of rows) {
      const level = y + boxHeight / 2;
      joints.push(level);
      let from = riserX;
      row.forEach((state, column) => {
        const x = nameColumn + 0.1 + column * (boxWidth + gap);
        sketch.line([from, level], [x, level], pens.medium);
        box(sketch, state, x, y);
        from = x + boxWidth;
      });
      y += boxHeight + gap;
    }
    sketch.line([edge, y - gap / 2], [paperWidth - edge, y - gap / 2], pens.hair);
  }
  const [first, last] = [joints[0] ?? 0, joints.at(-1) ?? 0];
  sketch.line([riserX, first], [riserX, last], pens.heavy);
  const fits = Math.floor((paperWidth - 2 * edge) / textWidth('x', letterHeight));
  y += 0.02;
  for (const [at, text] of [
    'Riser of power and control',
    'Each box: closet, openings fed, supplies and controllers. Not to scale.',
  ].entries())
    for (const line of wrap(text, fits)) {
      sketch.text([edge, y + letterHeight * 0.85], line, letterHeight, { strong: at === 0 });
      y += lineHeight;
    }
  return {
    frame: { width: paperWidth, height: y + 0.06 },
    paper: { width: paperWidth, height: y + 0.06 },
    title: 'Riser of power and control',
    description: floors
      .map(
        ([floorId, here]) =>
          `${floorId === null ? 'On no floor' : (project.floors[floorId]?.name ?? 'On no floor')}: ${here.map((one) => `${one.name}, ${linesOf(one).slice(1).join(', ')}`).join('; ')}.`,
      )
      .join(' '),
    notes: [],
    labels: 'words',
    notSurveyed: [],
    primitives: sketch.primitives,
  };
}

function levelOf(project: Project, floorId: string | null): number {
  return floorId === null
    ? Number.NEGATIVE_INFINITY
    : (project.floors[floorId]?.level ?? Number.NEGATIVE_INFINITY);
}

function linesOf({ name, openings, supplies, controllers }: ClosetState): readonly string[] {
  return [
    name,
    counted(openings.length, 'opening'),
    `${counted(supplies.length, 'supply', 'supplies')}, ${counted(controllers, 'controller')}`,
  ];
}

function box(sketch: Sketch, state: ClosetState, x: number, y: number): void {
  sketch.rect({ x, y, width: boxWidth, height: boxHeight }, { weight: 'medium', fill: 'paper' });
  const fits = Math.floor((boxWidth - 0.12) / textWidth('x', letterHeight));
  linesOf(state).forEach((line, i) =>
    sketch.text([x + 0.06, y + 0.05 + letterHeight * 0.85 + i * lineHeight], cut(line, fits), letterHeight, {
      strong: i === 0,
    }),
  );
}
