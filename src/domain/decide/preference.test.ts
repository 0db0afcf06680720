import { describe, expect, it } from 'vitest';
import type { DeviceId } from '../devices/devices.ts';
import { newOpening, newProject } from '../model/newProject.ts';
import type { Project } from '../model/project.ts';
import { candidates } from '../devices/candidates.ts';
import { fitRows } from '../fit/matrix.ts';
import { has } from './candidateSet.ts';
import { decide } from './decide.ts';
import { comesBefore, mayOutrank } from './outrank.ts';
import { totalsFor } from './totals.ts';
import { known } from '../testing/facts.ts';
import { reportOf } from '../words/report.ts';

const opening = {
  ...newOpening('a', '101'),
  facts: {
    doorType: known('single' as const),
    leafMaterial: known('hollowMetal' as const),
    frameMaterial: known('hollowMetal' as const),
    latch: known('mortise' as const),
    readerSides: known('secure' as const),
  },
};
const house: Project = { ...newProject('p', 'House'), openings: { a: opening } };
const preferring = (device: DeviceId, points: number, more: Partial<Project> = {}): Project => ({
  ...house,
  ...more,
  weights: {
    ...house.weights,
    preferred: { [device]: { points, says: 'Its parts are stocked.', standard: 'District, edition 4' } },
  },
});

describe('a device the owner prefers', () => {
  const plain = decide(house, opening);
  const second = plain.runnerUp?.candidate.deviceId;
  if (!plain.chosen || !plain.runnerUp || !second) throw new Error('nothing to compare');
  const gap = (plain.chosen.score.tenths - plain.runnerUp.score.tenths) / 10;

  it('comes first where its points outweigh what it is behind, and the report says by what and from where', () => {
    const points = Math.ceil(gap * 10 + 1) / 10;
    const decision = decide(preferring(second, points), opening);
    expect(decision.chosen?.candidate.deviceId).toBe(second);
    expect(decision.runnerUp?.candidate.deviceId).toBe(plain.chosen?.candidate.deviceId);
    const report = reportOf(decision);
    expect(report.preference[0]).toMatch(
      /is preferred by the owner \(District, edition 4\), [\d.]+ points: Its parts are stocked\.$/,
    );
    expect(report.preference[1]).toMatch(/^Without preferences .* would rank before it\.$/);
    expect(report.score.at(-1)).toMatchObject({ part: 'Owner’s preference', points: points.toFixed(1) });
    expect(report.runnerUp?.why).toMatch(/owner’s preference −/);
    // The parts and the preference are the whole.
    const sum = report.score.reduce((total, line) => total + Number(line.points), 0);
    expect(sum).toBeCloseTo(Number(report.points), 5);
  });

  it('stays behind where they do not, and is named beside the runner-up', () => {
    const decision = decide(preferring(second, Math.max(0.1, Math.floor(gap * 10 - 1) / 10)), opening);
    expect(decision.chosen?.candidate.deviceId).toBe(plain.chosen?.candidate.deviceId);
    expect(reportOf(decision).preference).toHaveLength(1);
  });

  it('is never brought back against a rule', () => {
    const ban = {
      id: 'n',
      says: 'None here.',
      source: 'Memo',
      effect: 'prohibit' as const,
      when: {},
      devices: [second],
      releases: [],
      failModes: [],
    };
    const decision = decide(preferring(second, 10, { amendments: [ban] }), opening);
    expect(decision.chosen?.candidate.deviceId).not.toBe(second);
    expect(decision.rejected.some(({ candidate }) => candidate.deviceId === second)).toBe(true);
  });

  it('counts when it is asked what may still come before the leader', () => {
    const { weights } = preferring(second, 10);
    const facts = {
      securityNeed: 'medium',
      traffic: 'medium',
      appearance: 'standard',
      latch: 'mortise',
      leafMaterial: 'hollowMetal',
      frameMaterial: 'hollowMetal',
      frameGrouted: false,
      workStatus: 'new',
      latchProjectionIn: 0.75,
    } as const;
    const [row] = fitRows;
    if (!row) throw new Error('no row');
    const totals = totalsFor(facts, row, weights);
    const [leader] = candidates;
    if (!leader) throw new Error('no candidate');
    // Nothing is unknown: exactly those that score more, or as much and stand before it, may.
    const may = mayOutrank(leader, totals, [row], weights);
    const found = candidates.filter(({ index }) => has(may, index)).map(({ index }) => index);
    const ahead = candidates
      .filter(({ index }) => index !== leader.index && comesBefore(totals.tenths, index, leader.index))
      .map(({ index }) => index);
    expect(found).toEqual(ahead);
    expect(ahead.length).toBeGreaterThan(0);
  });

  it('of which nothing is said leaves every report as it was', () => {
    expect(reportOf(plain).preference).toEqual([]);
    expect(reportOf(plain).score.some(({ part }) => part === 'Owner’s preference')).toBe(false);
  });
});
