import { candidates, type Candidate, type CandidateMatch, matches } from '../devices/candidates.ts';

/** A set of candidates as bits: one rule touches all it speaks of in three operations. */
export type CandidateSet = Uint32Array;
export const words = Math.ceil(candidates.length / 32);

export function emptySet(): CandidateSet {
  return new Uint32Array(words);
}
export function setOf(test: (candidate: Candidate) => boolean): CandidateSet {
  const set = emptySet();
  for (const candidate of candidates) if (test(candidate)) add(set, candidate.index);
  return set;
}
export function setMatching(match: CandidateMatch | undefined): CandidateSet {
  return setOf((candidate) => match === undefined || matches(match, candidate));
}
export function add(set: CandidateSet, index: number): void {
  set[index >>> 5] = (set[index >>> 5] as number) | (1 << (index & 31));
}
export function has(set: CandidateSet, index: number): boolean {
  return ((set[index >>> 5] as number) & (1 << (index & 31))) !== 0;
}
export function include(into: CandidateSet, other: CandidateSet): void {
  for (let word = 0; word < words; word++) into[word] = (into[word] as number) | (other[word] as number);
}
export function restrict(into: CandidateSet, other: CandidateSet): void {
  for (let word = 0; word < words; word++) into[word] = (into[word] as number) & (other[word] as number);
}
