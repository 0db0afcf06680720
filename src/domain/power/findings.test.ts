import { describe, expect, test } from 'vitest';
import { demoProject } from '../../../scripts/demo/demoProject.ts';
import { applyEdits, type Edit } from '../commands/command.ts';
import { decideAll } from '../decide/decide.ts';
import type { Supply } from '../model/power.ts';
import type { Project } from '../model/project.ts';
import { assignByTool } from './assign.ts';
import { type PowerFindingKind, powerFindings } from './findings.ts';
import { demandsOf, layOut, powerPlan } from './powerPlan.ts';

const demo = demoProject();
const decisions = decideAll(demo);
const findingsOf = (project: Project) => powerFindings(project, powerPlan(project, decisions));
const kindsAt = (project: Project, kind: PowerFindingKind) =>
  findingsOf(project).filter((one) => one.kind === kind);
const withSupply = (id: string, change: Partial<Supply>): Project => ({
  ...demo,
  supplies: { ...demo.supplies, [id]: { ...(demo.supplies[id] as Supply), ...change } },
});
function must(project: Project, edits: readonly Edit[]): Project {
  const applied = applyEdits(project, edits);
  if (!applied.ok) throw new Error('An edit was refused.');
  return applied.project;
}

describe('what is found about the demo building', () => {
  test('the supply that carries too much is named with its limit and its source', () => {
    const [overload, ...others] = kindsAt(demo, 'overload');
    expect(others).toEqual([]);
    expect(overload?.says).toBe('PS-4-1: 6 A on a 6 A supply is more than the 4.8 A that 80 % of it allows.');
    expect(overload?.source).toContain('80 %');
    expect(kindsAt(withSupply('supply-4-1', { amps: 10 }), 'overload')).toEqual([]);
  });
  test('a short battery, a closet without a circuit and the end of the battery are said', () => {
    expect(kindsAt(demo, 'shortBattery').map(({ supplyId }) => supplyId)).toContain('supply-1-3');
    expect(
      kindsAt(withSupply('supply-1-3', { batteryAh: 26 }), 'shortBattery').map((one) => one.supplyId),
    ).not.toContain('supply-1-3');
    expect(kindsAt(demo, 'noLinePower').map(({ closetId }) => closetId)).toEqual(['closet-p']);
    expect(kindsAt(demo, 'onBattery')[0]?.says).toContain('must be listed to work at that');
  });
  test.each<[PowerFindingKind, string, Partial<Supply>]>([
    ['wrongVolts', 'supply-5-1', { volts: 12 }],
    ['acDc', 'supply-5-1', { current: 'ac' }],
    ['fireAlarmPanel', 'supply-5-1', { fedBy: 'fireAlarmPanel' }],
    ['notOnBattery', 'supply-3-1', { batteryAh: 0 }],
    ['outputs', 'supply-5-1', { outputs: 4 }],
    ['peak', 'supply-1-1', { peakAmps: null }],
    ['class2', 'supply-1-1', { class2: true }],
  ])('%s: found at %s once it is so, and not before', (kind, id, change) => {
    const at = (project: Project) => kindsAt(project, kind).filter(({ supplyId }) => supplyId === id);
    expect(at(demo)).toEqual([]);
    expect(at(withSupply(id, change))).not.toEqual([]);
  });
  test('solenoid latch retraction that shares a supply asks for one of its own', () => {
    const shared = must(demo, [
      { kind: 'setRun', id: 'opening-103', field: 'supplyId', value: { value: 'supply-1-1' } },
    ]);
    expect(kindsAt(demo, 'ownSupply')).toEqual([]);
    expect(kindsAt(shared, 'ownSupply')[0]?.openingIds).toEqual(['opening-104A'.toLowerCase()]);
  });
});

describe('what is removed', () => {
  test('a closet that still feeds openings is named, and nothing assigned is lost', () => {
    const without = must(demo, [{ kind: 'putCloset', id: 'closet-2', value: null }]);
    const plan = powerPlan(without, decisions);
    const gone = kindsAt(without, 'gone');
    expect(gone.map(({ says }) => says).join(' ')).toMatch(/PS-2-1: its closet is no longer in the project/);
    expect(without.runs).toEqual(demo.runs);
    const before = powerPlan(demo, decisions);
    const carried = (one: typeof plan) => one.supplies.reduce((sum, state) => sum + state.demands.length, 0);
    expect(carried(plan)).toBe(carried(before));
    expect(plan.openings).toHaveLength(before.openings.length);
  });
  test('a supply that is gone leaves its openings unassigned and named', () => {
    const without = must(demo, [{ kind: 'putSupply', id: 'supply-r-1', value: null }]);
    expect(
      kindsAt(without, 'gone')
        .flatMap(({ openingIds }) => openingIds)
        .toSorted(),
    ).toEqual(['opening-r01', 'opening-r02', 'opening-r03']);
  });
});

describe('assigning by the tool', () => {
  const bare = { ...demo, supplies: {}, runs: {} };
  const demands = demandsOf(bare, decisions);
  let made = 0;
  const assigned = assignByTool(bare, demands, () => `new-${made++}`);
  const after = must(bare, assigned.edits);
  test('every opening gets the closet of its floor and a supply within every limit', () => {
    const plan = layOut(after, demands);
    expect(plan.openings.filter(({ placing }) => placing.supplyId === null)).toEqual([]);
    for (const { demand, placing } of plan.openings)
      expect(after.closets[placing.closetId ?? '']?.floorId).toBe(demand.floorId);
    const limits = ['overload', 'peak', 'outputs', 'class2', 'wrongVolts', 'ownSupply'];
    expect(powerFindings(after, plan).filter(({ kind }) => limits.includes(kind))).toEqual([]);
    expect(assigned.supplies).toBeGreaterThanOrEqual(assigned.bound);
    expect(assigned.says).toMatch(/^\d+ supplies in use/);
  });
  test('what a person assigned stays, and a second run changes nothing', () => {
    expect(assignByTool(after, demands, () => 'never').edits).toEqual([]);
    const again = assignByTool(demo, demands, () => `more-${made++}`);
    const touched = again.edits.flatMap((edit) => (edit.kind === 'setRun' ? [edit.id] : []));
    expect(new Set(touched)).toEqual(new Set(['opening-r04']));
  });
});
