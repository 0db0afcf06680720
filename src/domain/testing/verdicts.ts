import type { Decision } from '../decide/decision.ts';
import type { Opening, Project } from '../model/project.ts';
import type { Verdict } from '../model/verdict.ts';
import { sawBy } from '../review/log.ts';

/** A verdict on openings as they stand, for tests; approved unless said otherwise. */
export function verdictOn(
  project: Project,
  targets: readonly { readonly opening: Opening; readonly decision: Decision }[],
  other: Partial<Verdict> = {},
): Verdict {
  const sequence = Object.keys(project.verdicts).length + 1;
  return {
    id: `v${sequence}`,
    sequence,
    openingIds: targets.map(({ opening }) => opening.id),
    questions: [],
    verdict: 'approved',
    by: 'J. Reviewer',
    role: 'Plan reviewer',
    firm: '',
    license: '',
    reference: '',
    on: '2026-03-02',
    at: '2026-03-02T12:00:00.000Z',
    reason: '',
    conditions: [],
    withdraws: null,
    saw: sawBy({ project, targets }, 'test'),
    previousHash: '',
    hash: 'x',
    ...other,
  };
}

/** The project with one more entry in its log. */
export function withVerdict(project: Project, verdict: Verdict): Project {
  return { ...project, verdicts: { ...project.verdicts, [verdict.id]: verdict } };
}
