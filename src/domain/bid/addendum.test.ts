import { describe, expect, it } from 'vitest';
import { decideAll } from '../decide/decide.ts';
import { type Facts } from '../model/fact.ts';
import { known } from '../testing/facts.ts';
import { newOpening, newProject } from '../model/newProject.ts';
import type { Project } from '../model/project.ts';
import { addendumOf } from './addendum.ts';

const room: Facts = {
  doorType: known('single'),
  leafMaterial: known('hollowMetal'),
  frameMaterial: known('hollowMetal'),
  latch: known('mortise'),
  readerSides: known('secure'),
  leafWidthIn: known(36),
};
const at = '2026-03-02T09:00:00Z';
const strike = 'strikeMortise/secure/free';
const building = (...list: readonly (readonly [string, Facts, string?])[]): Project => ({
  ...newProject('p', 'Project'),
  openings: Object.fromEntries(
    list.map(([mark, facts, candidate = strike]) => [
      mark,
      {
        ...newOpening(mark, mark),
        facts: { ...room, ...facts },
        override: { candidate, reason: 'x', by: 'x', at },
      },
    ]),
  ),
});
const stand = (project: Project) => ({ project, decisions: decideAll(project) });

describe('addendum', () => {
  const first = building(['101', {}], ['102', {}]);

  it('is empty between an edition and itself', () => {
    expect(addendumOf(stand(first), stand(first))).toEqual({ openings: [], sets: [], quantities: [] });
  });

  it('names what came, went and changed, cell by cell, and nothing else', () => {
    const later = building(['101', { leafWidthIn: known(42) }], ['103', {}]);
    const { openings } = addendumOf(stand(first), stand(later));
    expect(openings.map((one) => [one.mark, one.kind])).toEqual([
      ['101', 'changed'],
      ['102', 'removed'],
      ['103', 'added'],
    ]);
    expect(openings[0]?.cells).toEqual([
      { column: 'Size W × H × T', was: `3'-0" × – × –`, is: `3'-6" × – × –` },
    ]);
  });

  it('says of a set what it became, and that a number is not used any more', () => {
    const later = building(['101', {}, 'mortiseLock/secure/free'], ['102', {}]);
    const { sets, openings } = addendumOf(stand(first), stand(later));
    expect(openings.map((one) => one.mark)).toEqual(['101', '102']);
    expect(sets.map((one) => one.id)).toEqual(['HS-01', 'HS-02']);
    const gone = addendumOf(stand(later), stand(first)).sets;
    expect(gone.find((one) => one.id === 'HS-02')?.says).toBe('not used any more');
  });
});
