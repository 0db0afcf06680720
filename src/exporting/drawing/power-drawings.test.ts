import { beforeAll, expect, test } from 'vitest';
import { demoProject } from '../../../scripts/demo/demoProject.ts';
import { decideAll } from '../../domain/decide/decide.ts';
import { type PowerPlan, powerPlan } from '../../domain/power/powerPlan.ts';
import { pointToPoint } from '../../domain/schedules/pointToPoint.ts';
import { oneLineOf } from '../../domain/schedules/oneLine.ts';
import { setWirings } from '../sheets/wiringSheet.ts';
import { sheetProblems, wordsOf } from '../testing/sheetChecks.ts';
import { powerPictures } from './power-kinds.ts';

const project = demoProject();
const decisions = decideAll(project);
let plan: PowerPlan;
beforeAll(() => {
  plan = powerPlan(project, decisions);
});

test('every picture of power keeps its sheet: nothing outside, no words that touch, told in words', () => {
  for (const place of ['desk', 'ownSheet'] as const) {
    const drawings = powerPictures(project, plan, place);
    expect(drawings.map(({ title }) => title).slice(0, 2)).toEqual([
      'Riser of power and control',
      'Voltage drop against length',
    ]);
    for (const drawing of drawings) {
      expect([drawing.title, sheetProblems(drawing)]).toEqual([drawing.title, []]);
      expect(drawing.description).not.toBe('');
    }
  }
});

test('a bar of the load chart is as long as the amperes it stands for', () => {
  const chart = powerPictures(project, plan).find(({ title }) => title === 'Load of IDF fourth floor');
  const bars = chart?.primitives.flatMap((one) =>
    one.kind === 'rect' && one.box.height > 0.15 ? [one.box] : [],
  );
  const state = plan.supplies.find(({ supply }) => supply.name === 'PS-4-1');
  const [rated, standing] = bars ?? [];
  expect((standing?.width ?? 0) / (rated?.width ?? 1)).toBeCloseTo((state?.standingA ?? 0) / 6, 6);
});

test('every wired set is drawn terminal to terminal, and every contact of the circuit is passed once', () => {
  for (const { drawing } of setWirings(project, decisions, plan, { width: 5, reduced: 1 }))
    expect([drawing.description, sheetProblems(drawing)]).toEqual([drawing.description, []]);
  for (const decision of decisions.values()) {
    const line = oneLineOf(decision);
    if (!line) continue;
    const wires = pointToPoint(decision, [18])?.groups.flatMap((group) => group.wires) ?? [];
    const contacts = line.circuit.filter(({ contact }) => contact !== undefined).length;
    const passed = wires.filter(({ to }) => to.endsWith(' C') && !/input|Supply −/.test(to));
    const reporting = wires.filter(({ from }) => from.endsWith('input +')).length;
    expect(passed.length - reporting).toBe(contacts);
    expect(wires.filter(({ to }) => to === 'Lock +' || to === 'Lock −')).toHaveLength(2);
    expect(new Set(wires.map(({ to }) => to)).size).toBe(wires.length);
  }
});

test('the drop chart says which run is longest', () => {
  const chart = powerPictures(project, plan).find(({ title }) => title === 'Voltage drop against length');
  expect(chart && wordsOf(chart).join(' ')).toContain('Longest run: P04');
});
