import type { Project } from '../domain/model/project.ts';
import type { ReviewerKey, Verdict } from '../domain/model/verdict.ts';
import { type Asked, type VerdictDraft, verdictLabel } from '../domain/review/draft.ts';
import {
  entryFrom,
  headOf,
  rootText,
  sealedText,
  type Unsealed,
  withdrawalOf,
  type Written,
} from '../domain/review/log.ts';
import { programInWords } from '../domain/review/program.ts';
import { checkLog, type LogCheck, textsToHash } from '../domain/review/verify.ts';
import type { Clock, NewId } from './clock.ts';
import { sha256 } from '../intake/sha256.ts';
import { verifies } from './signatures.ts';
import type { AppStore, Dispatched } from './store.ts';

/** A reviewer's key, ready to sign. */
export interface Signer {
  readonly key: ReviewerKey;
  /** Signs the hash of an entry. */
  readonly sign: (hash: string) => Promise<string>;
}

export interface DeskNeeds {
  readonly store: AppStore;
  readonly clock: Clock;
  readonly newId: NewId;
}

type Day = Pick<Asked, 'today' | 'dayOf'>;

/** Where verdicts are written: the hash is made here, and the finished entry goes into the log as one edit. */
export interface VerdictDesk {
  readonly write: (
    draft: VerdictDraft,
    asked: Omit<Asked, 'project'>,
    signer?: Signer | null,
  ) => Promise<Dispatched>;
  readonly withdraw: (
    target: Verdict,
    draft: VerdictDraft,
    day: Day,
    signer?: Signer | null,
  ) => Promise<Dispatched>;
}

const desks = new WeakMap<AppStore, VerdictDesk>();

/** The desk of one app: entries written from two places wait for one another. */
export function deskOf(needs: DeskNeeds): VerdictDesk {
  const desk = desks.get(needs.store) ?? createVerdictDesk(needs);
  desks.set(needs.store, desk);
  return desk;
}

const noHash =
  'This browser makes no hashes on a page that is not served securely, so nothing can be signed here. Open Latchward at localhost or over HTTPS.';
const notComplete = 'Something is missing or changed in the meantime. Look at the form again.';

export function createVerdictDesk({ store, clock, newId }: DeskNeeds): VerdictDesk {
  const project = () => store.getState().document.project;
  /** One after the other: each entry leans on the hash of the one before. */
  let turn: Promise<unknown> = Promise.resolve();
  function inTurn<T>(work: () => Promise<T>): Promise<T> {
    const mine = turn.then(work, work);
    turn = mine.catch(() => undefined);
    return mine;
  }

  async function put(
    make: (written: Written) => Unsealed | undefined,
    signer: Signer | null,
  ): Promise<Dispatched> {
    const { verdicts, openings } = project();
    const previousHash = headOf(verdicts)?.hash ?? (await sha256(rootText(verdicts)));
    if (previousHash === undefined) return { ok: false, says: noHash, problem: null };
    const entry = make({ id: newId(), at: clock(), program: programInWords(), previousHash });
    if (!entry) return { ok: false, says: notComplete, problem: null };
    const hash = await sha256(sealedText(entry));
    if (hash === undefined) return { ok: false, says: noHash, problem: null };
    const seal = signer ? { key: signer.key, signature: await signer.sign(hash) } : {};
    const value = { ...entry, hash, ...seal } as Verdict;
    const marks = entry.openingIds.map((id) => openings[id]?.mark ?? id);
    return store
      .getState()
      .dispatch(verdictLabel(entry.verdict, entry.by, marks), [
        { kind: 'appendVerdict', id: entry.id, value },
      ]);
  }

  return {
    write: (draft, asked, signer = null) =>
      inTurn(() => put((written) => entryFrom(draft, { ...asked, project: project() }, written), signer)),
    withdraw: (target, draft, day, signer = null) =>
      inTurn(() =>
        put((written) => withdrawalOf(target, draft, { ...day, project: project() }, written), signer),
      ),
  };
}

/** The whole log held against its hashes and signatures; null where the browser makes none. */
export async function checkLogOf(project: Project): Promise<LogCheck | null> {
  const root = await sha256(rootText(project.verdicts));
  if (root === undefined) return null;
  const hashes = new Map<string, string>();
  for (const [id, text] of textsToHash(project)) hashes.set(id, (await sha256(text)) ?? '');
  const signatures = new Map<string, boolean>();
  for (const one of Object.values(project.verdicts)) {
    if (one.signature !== undefined || one.key !== undefined) signatures.set(one.id, await verifies(one));
  }
  return checkLog(project, { hashes, root, signatures });
}
