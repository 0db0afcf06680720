import { basisInWords } from '../codes/basis.ts';
import { textOf } from '../model/sorted.ts';
import type { Project } from '../model/project.ts';
import { inSequence, type Verdict, type Verdicts } from '../model/verdict.ts';
import { type Asked, conditionsOf, type VerdictDraft, verdictProblems } from './draft.ts';
import { sightOf } from './sight.ts';

/** An entry before its hash is taken. */
export type Unsealed = Pick<
  Verdict,
  | 'id'
  | 'sequence'
  | 'openingIds'
  | 'questions'
  | 'verdict'
  | 'by'
  | 'role'
  | 'firm'
  | 'license'
  | 'reference'
  | 'on'
  | 'at'
  | 'reason'
  | 'conditions'
  | 'withdraws'
  | 'saw'
  | 'previousHash'
>;

/** The text an entry's hash is taken over: everything in it, what a newer version added as well, but for its own seal. */
export function sealedText(entry: Unsealed | Verdict): string {
  const { hash: _hash, signature: _signature, key: _key, ...content } = entry as Verdict;
  return textOf(content);
}

/**
 * What the first sealed entry leans on: the entries an older file left without hashes, so that one of them cannot be
 * changed later without being found.
 */
export function rootText(verdicts: Verdicts): string {
  return textOf(inSequence(verdicts).filter((one) => one.hash === ''));
}

/** The last sealed entry, which the next one leans on; undefined while there is none. */
export function headOf(verdicts: Verdicts): Verdict | undefined {
  return inSequence(verdicts).findLast((one) => one.hash !== '');
}

export interface Written {
  readonly id: string;
  readonly at: string;
  /** Version of the program. */
  readonly program: string;
  /** Hash of the last sealed entry, or of the root. */
  readonly previousHash: string;
}

/** The entry that goes into the log, with what lay before the reviewer. Undefined while something is missing. */
export function entryFrom(draft: VerdictDraft, asked: Asked, written: Written): Unsealed | undefined {
  const { verdict } = draft;
  if (verdict === '' || verdict === 'withdrawn') return undefined;
  if (Object.keys(verdictProblems(draft, asked)).length > 0) return undefined;
  return {
    ...signedBy(draft),
    ...placed(asked.project, written),
    openingIds: asked.targets.map(({ opening }) => opening.id),
    questions: [...asked.questions],
    verdict,
    conditions: [...conditionsOf(draft)],
    withdraws: null,
    saw: sawBy(asked, written.program),
  };
}

/** Takes an entry back: the entry stays, and this one says why. */
export function withdrawalOf(
  target: Verdict,
  draft: VerdictDraft,
  asked: Omit<Asked, 'targets' | 'questions'>,
  written: Written,
): Unsealed | undefined {
  const problems = verdictProblems(
    { ...draft, verdict: 'withdrawn' },
    { ...asked, targets: [], questions: [] },
  );
  if (Object.keys(problems).length > 0 || target.verdict === 'withdrawn') return undefined;
  return {
    ...signedBy(draft),
    ...placed(asked.project, written),
    openingIds: [...target.openingIds],
    questions: [...target.questions],
    verdict: 'withdrawn',
    conditions: [],
    withdraws: target.id,
    saw: { basis: basisInWords(asked.project.basis), program: written.program, amendments: {}, openings: {} },
  };
}

function signedBy(draft: VerdictDraft) {
  const { by, role, firm, license, reference, reason, on } = draft;
  return {
    by: by.trim(),
    role: role.trim(),
    firm: firm.trim(),
    license: license.trim(),
    reference: reference.trim(),
    reason: reason.trim(),
    on,
  };
}

function placed({ verdicts }: Project, { id, at, previousHash }: Written) {
  const last = inSequence(verdicts).at(-1);
  return { id, at, previousHash, sequence: (last?.sequence ?? 0) + 1 };
}

/** What lay before them: every local amendment as it read, and each opening as it stood. */
export function sawBy(
  { project, targets, building = [] }: Pick<Asked, 'project' | 'targets' | 'building'>,
  program: string,
): Verdict['saw'] {
  return {
    ...(building.length > 0 ? { building: [...building] } : {}),
    basis: basisInWords(project.basis),
    program,
    amendments: Object.fromEntries(project.amendments.map(({ id, says, source }) => [id, { says, source }])),
    openings: Object.fromEntries(
      targets.map(({ opening, decision }) => [opening.id, sightOf(project, opening, decision)]),
    ),
  };
}
