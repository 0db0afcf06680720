import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decide } from '../decide/decide.ts';
import { factsIn } from '../decide/ruleBook.ts';
import { known } from '../model/fact.ts';
import type { Facts } from '../model/fact.ts';
import { openingFactKeys } from '../model/fields.ts';
import { newOpening, newProject } from '../model/newProject.ts';
import type { Opening, Project, Review } from '../model/project.ts';
import { aFactOf, someFacts } from '../testing/arbitraries.ts';
import { reviewState, whatReviewerSaw } from './review.ts';

const officeFacts: Facts = {
  doorType: known('single'),
  leafMaterial: known('hollowMetal'),
  frameMaterial: known('hollowMetal'),
  latch: known('mortise'),
  readerSides: known('secure'),
  fireRatingMin: known(45),
  wallRatingMin: known(60),
  wallKind: known('fireBarrier'),
  egressRole: known('exitAccess'),
  occupantLoad: known(4),
  roomUse: known('office'),
  occupancyGroup: known('B'),
};
const project = newProject('p', 'Project');
const office: Opening = { ...newOpening('a', '101'), facts: officeFacts };

function reviewed(of: Opening, within: Project = project, verdict: Review['verdict'] = 'approved'): Opening {
  const saw = whatReviewerSaw(decide(within, of));
  return { ...of, review: { verdict, by: 'Reviewer', on: '2026-03-02', reason: '', saw: { ...saw } } };
}
const stateOf = (opening: Opening, within: Project = project) =>
  reviewState(opening, decide(within, opening));

describe('review of an opening', () => {
  it('keeps the verdict while nothing that was judged changes', () => {
    for (const verdict of ['approved', 'refused', 'toAhj'] as const) {
      expect(stateOf(reviewed(office, project, verdict)).state).toBe(verdict);
    }
  });

  it('takes no notice of a new mark, note or room', () => {
    const renamed = { ...reviewed(office), mark: '999', notes: 'Painted.', toSpaceId: 'elsewhere' };
    expect(stateOf(renamed)).toMatchObject({ state: 'approved', says: [] });
  });

  it('goes stale when a fact relied on changes, and says which and how', () => {
    const before = reviewed(office);
    const after = { ...before, facts: { ...before.facts, fireRatingMin: known(90) } };
    const status = stateOf(after);
    expect(status.state).toBe('stale');
    expect(status.changedFacts).toContain('fireRatingMin');
    expect(status.says).toContain('Fire rating of the door: was 45 min, is 90 min.');
    expect(status.review?.verdict).toBe('approved');
  });

  it('goes stale when the code basis or the arrangement changes', () => {
    const mark = reviewed(office);
    const otherBasis = { ...project, basis: { ...project.basis, ibc: 2018 as const } };
    expect(stateOf(mark, otherBasis)).toMatchObject({ state: 'stale', basisChanged: true });
    const byHand = {
      ...mark,
      override: { candidate: 'magnet/safe/sensor', reason: 'Owner', by: 'x', at: '2026-03-02T09:00:00Z' },
    };
    expect(stateOf(byHand)).toMatchObject({ state: 'stale', candidateChanged: true });
  });

  it('waits for a reviewer where something must be signed, and only there', () => {
    const byHand = {
      ...office,
      override: { candidate: 'magnet/safe/sensor', reason: 'Owner', by: 'x', at: '2026-03-02T09:00:00Z' },
    };
    expect(stateOf(byHand).state).toBe('open');
  });

  it('is not made stale by a fact this version does not know', () => {
    const mark = reviewed(office);
    const review = mark.review as Review;
    const saw = { ...review.saw, facts: { ...review.saw.facts, factOfTomorrow: 7 } };
    expect(stateOf({ ...mark, review: { ...review, saw } }).state).toBe('approved');
  });

  it('a fresh mark is never stale, and one changed relied fact always makes it so', () => {
    fc.assert(
      fc.property(
        someFacts(),
        fc.constantFrom(...openingFactKeys).chain((key) => fc.tuple(fc.constant(key), aFactOf(key))),
        (facts, [key, fact]) => {
          const before = reviewed({ ...newOpening('a', '1'), facts });
          expect(stateOf(before).state).toBe('approved');
          const after = { ...before, facts: { ...before.facts, [key]: fact } as Facts };
          const relied = factsIn(decide(project, before).relied).includes(key);
          const seen = before.review?.saw.facts[key] ?? null;
          const now = fact.is === 'unknown' ? null : fact.value;
          const mustBeStale = relied && seen !== now;
          expect(!mustBeStale || stateOf(after).state === 'stale').toBe(true);
        },
      ),
      { numRuns: 150 },
    );
  });
});
