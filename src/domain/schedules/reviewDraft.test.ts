import { describe, expect, it } from 'vitest';
import { decide } from '../decide/decide.ts';
import { known } from '../model/fact.ts';
import { newOpening, newProject } from '../model/newProject.ts';
import type { Opening } from '../model/project.ts';
import {
  isOverProhibition,
  type ReviewDraft,
  reviewFrom,
  reviewLabel,
  reviewProblems,
} from './reviewDraft.ts';

const project = newProject('p', 'Project');
const office: Opening = {
  ...newOpening('a', '101'),
  facts: {
    doorType: known('single'),
    leafMaterial: known('hollowMetal'),
    frameMaterial: known('hollowMetal'),
    latch: known('mortise'),
    readerSides: known('secure'),
    fireRatingMin: known(45),
    egressRole: known('exitAccess'),
    occupantLoad: known(4),
    roomUse: known('office'),
    occupancyGroup: known('B'),
  },
};
const decision = decide(project, office);
const forbidden = decision.rejected[0]?.candidate.id ?? '';
const forced = decide(project, {
  ...office,
  override: { candidate: forbidden, reason: 'Owner', by: 'Owner', at: '2026-03-02T08:00:00Z' },
});
const full: ReviewDraft = { verdict: 'approved', by: ' J. Reviewer ', on: '2026-03-02', reason: '' };

describe('a review being filled in', () => {
  it('needs a verdict, a name and a day', () => {
    const problems = reviewProblems({ verdict: '', by: ' ', on: 'soon', reason: '' }, decision);
    expect(Object.keys(problems)).toEqual(['verdict', 'by', 'on']);
    expect(reviewFrom({ ...full, by: '' }, decision)).toBeUndefined();
  });

  it('needs a reason to refuse and to ask the authority, not to approve', () => {
    for (const verdict of ['refused', 'toAhj'] as const) {
      expect(reviewProblems({ ...full, verdict }, decision)).toHaveProperty('reason');
      expect(reviewProblems({ ...full, verdict, reason: 'Because.' }, decision)).toEqual({});
    }
    expect(reviewProblems(full, decision)).toEqual({});
  });

  it('needs a reason to approve what a rule forbids', () => {
    expect(isOverProhibition(decision)).toBe(false);
    expect(isOverProhibition(forced)).toBe(true);
    expect(reviewProblems(full, forced)).toHaveProperty('reason');
  });

  it('keeps what lay before the reviewer, and the name without stray spaces', () => {
    const review = reviewFrom(full, decision);
    expect(review).toMatchObject({ by: 'J. Reviewer', verdict: 'approved', on: '2026-03-02' });
    expect(review?.saw.candidate).toBe(decision.chosen?.candidate.id);
    expect(review?.saw.facts['fireRatingMin']).toBe(45);
    expect(reviewLabel('101', review ?? null)).toBe('101: Approved by J. Reviewer');
  });
});
