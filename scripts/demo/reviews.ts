import { createHash } from 'node:crypto';
import { decideInBuilding } from '../../src/domain/building/joined.ts';
import type { Project } from '../../src/domain/model/project.ts';
import type { SeenFact, Verdict, VerdictKind } from '../../src/domain/model/verdict.ts';
import { headOf, rootText, sawBy, sealedText, type Unsealed } from '../../src/domain/review/log.ts';
import { openingId } from './kit.ts';

interface ReviewRow {
  readonly marks: readonly string[];
  /** What it answers; left out for everything that is asked there. */
  readonly questions?: readonly string[];
  readonly verdict: VerdictKind;
  readonly on: string;
  readonly reason: string;
  readonly conditions?: readonly string[];
  readonly reference?: string;
  /** Number of the row it takes back, from 1. */
  readonly withdraws?: number;
  /** What stood otherwise on the day of the review; the verdict is then stale. */
  readonly before?: Readonly<Record<string, SeenFact>>;
}

const rows: readonly ReviewRow[] = [
  {
    marks: ['S1-2'],
    verdict: 'approved',
    on: '2026-03-04',
    reason: 'Released with all other stair doors.',
    before: { fireRatingMin: { is: 'known', value: 60 } },
  },
  {
    marks: ['101'],
    verdict: 'refused',
    on: '2026-03-06',
    reason: 'The inactive leaf was not shown in the submittal.',
  },
  {
    marks: ['304'],
    verdict: 'passedToAuthority',
    on: '2026-03-09',
    reason: 'Asked whether the pharmacy board wants more than the building code.',
    reference: 'Letter of March 9, 2026',
  },
  {
    marks: ['101'],
    verdict: 'withdrawn',
    on: '2026-03-09',
    reason: 'The revised submittal shows both leaves.',
    withdraws: 2,
  },
  {
    marks: ['101'],
    verdict: 'approved',
    on: '2026-03-09',
    reason: 'Bars open both leaves in every condition.',
  },
];

const sha256 = (text: string) => createHash('sha256').update(text, 'utf8').digest('hex');

/** Writes the log after everything else, because each entry keeps what the reviewer saw of the decision. */
export function withReviews(project: Project): Project {
  const decisions = decideInBuilding(project);
  return rows.reduce((before: Project, row, index) => {
    const targets = row.marks.map((mark) => {
      const id = openingId(mark);
      const [opening, decision] = [before.openings[id], decisions.get(id)];
      if (!opening || !decision) throw new Error(`A review names ${mark}, which is not there.`);
      return { opening, decision };
    });
    const entry: Unsealed = {
      id: `demo-verdict-${index + 1}`,
      sequence: index + 1,
      openingIds: targets.map(({ opening }) => opening.id),
      questions: [...(row.questions ?? [])],
      verdict: row.verdict,
      by: 'Demo reviewer',
      role: 'Plan reviewer',
      firm: 'Demo plan review',
      license: '',
      reference: row.reference ?? '',
      on: row.on,
      at: `${row.on}T16:00:00.000Z`,
      reason: row.reason,
      conditions: [...(row.conditions ?? [])],
      withdraws: row.withdraws === undefined ? null : `demo-verdict-${row.withdraws}`,
      saw:
        row.verdict === 'withdrawn'
          ? { ...sawBy({ project: before, targets: [] }, demoProgram) }
          : withBefore(sawBy({ project: before, targets }, demoProgram), row.before),
      previousHash: headOf(before.verdicts)?.hash ?? sha256(rootText(before.verdicts)),
    };
    const verdict: Verdict = { ...entry, hash: sha256(sealedText(entry)) };
    return {
      ...before,
      verdicts: { ...before.verdicts, [verdict.id]: verdict },
      verdictIndex: { ...before.verdictIndex, [verdict.id]: verdict.hash },
    };
  }, project);
}

/** The demo is written anew with every rule change; a version in it would change it each time. */
const demoProgram = 'demo';

function withBefore(saw: Verdict['saw'], before: ReviewRow['before'] = {}): Verdict['saw'] {
  return {
    ...saw,
    openings: Object.fromEntries(
      Object.entries(saw.openings).map(([id, sight]) => [
        id,
        { ...sight, facts: { ...sight.facts, ...before } },
      ]),
    ),
  };
}
