import type { Project } from '../model/project.ts';
import { inSequence, type Verdict } from '../model/verdict.ts';
import { counted } from '../text/counted.ts';
import { sealedText } from './log.ts';
import { verdictSays } from './words.ts';

export type SealState =
  /** Its content has the hash it carries, and what it leans on is there. */
  | 'whole'
  /** From a file before hashes were kept. */
  | 'unsealed'
  | 'changed';

export type SignatureState = 'none' | 'valid' | 'false';

export interface EntryCheck {
  readonly verdict: Verdict;
  readonly seal: SealState;
  readonly signature: SignatureState;
  /** What is wrong with it, in sentences; empty where nothing is. */
  readonly says: readonly string[];
}

export interface LogCheck {
  readonly entries: readonly EntryCheck[];
  /** What is wrong with the log as a whole. */
  readonly says: readonly string[];
  readonly whole: boolean;
  /** Times that cannot all be right. No proof that anything was changed: a clock may have been wrong. */
  readonly clocks: readonly string[];
}

/** What had to be worked out elsewhere, because hashes and signatures are not made here. */
export interface Proofs {
  /** SHA-256 of the sealed text of each entry, by id. */
  readonly hashes: ReadonlyMap<string, string>;
  readonly root: string;
  /** Whether the signature of each signed entry fits its hash and the key it names. */
  readonly signatures: ReadonlyMap<string, boolean>;
}

/** The texts to be hashed, by entry. */
export function textsToHash({ verdicts }: Pick<Project, 'verdicts'>): ReadonlyMap<string, string> {
  return new Map(Object.values(verdicts).map((one) => [one.id, sealedText(one)]));
}

/** Name of an entry a person finds again: "Entry 4 (Approved by J. Reviewer, 2026-03-09)". */
export function entryName({ sequence, verdict, by, on }: Verdict): string {
  return `Entry ${sequence} (${verdictSays[verdict]} by ${by}, ${on})`;
}

/** Every entry held against its hash and the one before it. What was edited, cut out or moved is named. */
export function checkLog(project: Pick<Project, 'verdicts' | 'verdictIndex'>, proofs: Proofs): LogCheck {
  const all = inSequence(project.verdicts);
  const byHash = new Map(all.filter((one) => one.hash !== '').map((one) => [one.hash, one]));
  const entries = all.map((verdict) => checkEntry(verdict, byHash, proofs));
  const says = [...cutOut(project), ...branches(all), ...twoKeys(all)];
  const whole = says.length === 0 && entries.every((one) => one.says.length === 0);
  return { entries, says, whole, clocks: clocks(all) };
}

function checkEntry(verdict: Verdict, byHash: ReadonlyMap<string, Verdict>, proofs: Proofs): EntryCheck {
  const says: string[] = [];
  const name = entryName(verdict);
  const signature = signatureOf(verdict, proofs);
  if (signature === 'false')
    says.push(`${name}: the signature does not fit its content and the key it names.`);
  if (verdict.hash === '') {
    if (verdict.at !== null) says.push(`${name} carries no hash although entries of its time do.`);
    return { verdict, seal: verdict.at === null ? 'unsealed' : 'changed', signature, says };
  }
  if (proofs.hashes.get(verdict.id) !== verdict.hash) {
    says.push(`${name} was changed after it was written: its content does not have the hash it carries.`);
  }
  const before = byHash.get(verdict.previousHash);
  if (!before && verdict.previousHash !== proofs.root) {
    says.push(
      [...byHash.values()].every((one) => one.sequence >= verdict.sequence)
        ? `${name} leans on entries of an older file that were changed or are not there.`
        : `${name} leans on an entry that is not in the log: it was changed or cut out.`,
    );
  } else if (before && before.sequence >= verdict.sequence) {
    says.push(`${name} leans on ${entryName(before)}, which stands after it: their order was changed.`);
  } else if (before && before.sequence !== verdict.sequence - 1) {
    says.push(
      `${name} leans on ${entryName(before)}: its number was changed, or what stood between them was.`,
    );
  }
  return {
    verdict,
    seal: says.length > (signature === 'false' ? 1 : 0) ? 'changed' : 'whole',
    signature,
    says,
  };
}

function signatureOf(verdict: Verdict, { signatures }: Proofs): SignatureState {
  if (verdict.signature === undefined && verdict.key === undefined) return 'none';
  return signatures.get(verdict.id) === true ? 'valid' : 'false';
}

/** Entries that the index names and the log does not hold, or holds with another hash. */
function cutOut({ verdicts, verdictIndex }: Pick<Project, 'verdicts' | 'verdictIndex'>): readonly string[] {
  const missing = Object.keys(verdictIndex).filter((id) => !Object.hasOwn(verdicts, id));
  const unknown = Object.values(verdicts).filter(({ id }) => !Object.hasOwn(verdictIndex, id));
  const other = Object.values(verdicts).filter(
    ({ id, hash }) => Object.hasOwn(verdictIndex, id) && verdictIndex[id] !== hash,
  );
  return [
    ...missing.map((id) => `An entry is missing: ${id} stands in the index of the log and is not in it.`),
    ...unknown.map(
      (one) => `${entryName(one)} is not in the index of the log: it was put in by other means.`,
    ),
    ...other.map((one) => `${entryName(one)} carries another hash than the index of the log.`),
  ];
}

/** Two entries with one number were written on two devices, or put in later. */
function branches(all: readonly Verdict[]): readonly string[] {
  const byNumber = new Map<number, Verdict[]>();
  for (const one of all) byNumber.set(one.sequence, [...(byNumber.get(one.sequence) ?? []), one]);
  const twice = [...byNumber.values()].filter((list) => list.length > 1);
  const last = all.at(-1)?.sequence ?? 0;
  const gaps = Array.from({ length: last }, (_, index) => index + 1).filter(
    (number) => !byNumber.has(number),
  );
  return [
    ...twice.map(
      (list) => `${list.map(entryName).join(' and ')} carry one number: they were written on two devices.`,
    ),
    ...(gaps.length === 0
      ? []
      : [`${counted(gaps.length, 'entry', 'entries')} missing from the log: number ${gaps.join(', ')}.`]),
  ];
}

/** Written before the entry it follows, or dated on a day that had not come yet anywhere on earth. */
function clocks(all: readonly Verdict[]): readonly string[] {
  return all.flatMap((one, index) => {
    const before = all[index - 1];
    const early = before?.at && one.at && Date.parse(one.at) < Date.parse(before.at);
    const ahead = one.at !== null && Date.parse(one.on) > Date.parse(one.at) + 86_400_000;
    return [
      ...(early
        ? [
            `${entryName(one)} was written before ${entryName(before)}, by their clocks. One of them was wrong.`,
          ]
        : []),
      ...(ahead ? [`${entryName(one)} is dated after the day it was written. A clock was wrong.`] : []),
    ];
  });
}

function twoKeys(all: readonly Verdict[]): readonly string[] {
  const prints = new Map<string, Set<string>>();
  for (const { by, key } of all) {
    if (key) prints.set(by, new Set([...(prints.get(by) ?? []), key.print]));
  }
  return [...prints]
    .filter(([, keys]) => keys.size > 1)
    .map(([by, keys]) => `${by} signed with ${keys.size} different keys. Ask which of them are theirs.`);
}
