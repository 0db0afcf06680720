import { describe, expect, it } from 'vitest';
import { decideAll } from '../../domain/decide/decide.ts';
import { known } from '../../domain/testing/facts.ts';
import { newOpening, newProject } from '../../domain/model/newProject.ts';
import { legendSheet } from './legendSheet.ts';

describe('legend', () => {
  it('prints what the project uses and nothing else', () => {
    const override = {
      candidate: 'strikeMortise/secure/free',
      reason: 'x',
      by: 'x',
      at: '2026-03-02T09:00:00Z',
    };
    const facts = {
      doorType: known('single' as const),
      leafMaterial: known('hollowMetal' as const),
      latch: known('mortise' as const),
    };
    const project = {
      ...newProject('p', 'Project'),
      openings: { a: { ...newOpening('a', '101'), facts, override } },
    };
    const { groups } = legendSheet(decideAll(project));
    const ids = Object.fromEntries(groups.map((group) => [group.id, Object.keys(group.symbols)]));
    expect(ids).toEqual({ device: ['strikeMortise'], failMode: ['secure'], release: ['free'] });
    expect(legendSheet(new Map()).groups).toEqual([]);
  });
});
