import { decideInBuilding } from '../../src/domain/building/joined.ts';
import type { Project, Review } from '../../src/domain/model/project.ts';
import { type Saw, whatReviewerSaw } from '../../src/domain/schedules/review.ts';
import { openingId } from './kit.ts';

interface ReviewRow {
  readonly mark: string;
  readonly verdict: Review['verdict'];
  readonly on: string;
  readonly reason: string;
  /** What stood otherwise on the day of the review; the mark is then stale. */
  readonly before?: Saw['facts'];
}

const rows: readonly ReviewRow[] = [
  { mark: '101', verdict: 'approved', on: '2026-03-09', reason: 'Bars open both leaves in every condition.' },
  {
    mark: '304',
    verdict: 'toAhj',
    on: '2026-03-09',
    reason: 'Asked whether the pharmacy board wants more than the building code.',
  },
  {
    mark: 'S1-2',
    verdict: 'approved',
    on: '2026-03-04',
    reason: 'Released with all other stair doors.',
    before: { fireRatingMin: 60 },
  },
];

/** Puts the marks on after everything else, because each keeps what the reviewer saw of the decision. */
export function withReviews(project: Project): Project {
  const openings = { ...project.openings };
  const decisions = decideInBuilding(project);
  for (const { mark, verdict, on, reason, before } of rows) {
    const opening = openings[openingId(mark)];
    const decision = decisions.get(openingId(mark));
    if (!opening || !decision) throw new Error(`A review names ${mark}, which is not there.`);
    const saw = whatReviewerSaw(decision);
    const review: Review = {
      verdict,
      by: 'Demo reviewer',
      on,
      reason,
      saw: { ...saw, facts: { ...saw.facts, ...before } },
    };
    openings[opening.id] = { ...opening, review };
  }
  return { ...project, openings };
}
